// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/lattice_search.h"

#include "core/solver/choice_rules.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kHardTolerance = 1e-9;
constexpr double kHardPrice = 1e6;  // of a hard row, per largest step
constexpr double kLeastScale = 1e-300;
constexpr double kMostRounds = 100.0;
constexpr double kMostWork =
    3e7;  // rows looked at for moves: on large programs nodes bring more in that time

/// Keeps row activities up to date while single columns move, and prices a move without recomputing
/// everything. Rows and prices are those that answers are judged by, in their own units.
class Mover {
 public:
  Mover(const ScaledProgram& program, const Stage& stage, Eigen::VectorXd z)
      : program_(program),
        stage_(stage),
        rows_(program.judge->rows * program.unit.head(program.judgedColumns()).asDiagonal()),
        z_(std::move(z)),
        activity_(rows_ * z_),
        spread_(Eigen::VectorXd::Zero(activity_.size())),
        hardScale_(rows_.cwiseAbs().rowwise().maxCoeff().cwiseMax(kLeastScale)) {
    if (!program.judge->scatter) return;
    squares_ =
        (*program.judge->scatter * program.unit.head(program.judgedColumns()).asDiagonal()).cwiseAbs2();
    spread_ = squares_ * z_.cwiseAbs2();
  }

  [[nodiscard]] double merit() const { return rowMerit(activity_, spread_) + columnMerit(z_); }
  [[nodiscard]] const Eigen::VectorXd& z() const { return z_; }

  bool allowed(Eigen::Index j, double value) const {
    if (value < program_.lower[j] || value > program_.upper[j]) return false;
    return value == 0.0 || value >= program_.threshold[j];
  }
  double tryMove(Eigen::Index j, double by, Eigen::Index other, double otherBy) {
    tried_ = activity_ + by * rows_.col(j);
    triedSpread_ = spread_;
    addSpread(triedSpread_, j, by);
    if (other >= 0) {
      tried_ += otherBy * rows_.col(other);
      addSpread(triedSpread_, other, otherBy);
    }
    double merit = rowMerit(tried_, triedSpread_) + columnMerit(z_);
    merit += columnCost(j, z_[j] + by) - columnCost(j, z_[j]);
    if (other >= 0) merit += columnCost(other, z_[other] + otherBy) - columnCost(other, z_[other]);
    return merit;
  }
  void move(Eigen::Index j, double by) {
    addSpread(spread_, j, by);
    z_[j] += by;
    activity_ += by * rows_.col(j);
  }

 private:
  /// spread holds squares.
  void addSpread(Eigen::VectorXd& spread, Eigen::Index j, double by) const {
    if (squares_.size() > 0) spread += (by * (2.0 * z_[j] + by)) * squares_.col(j);
  }
  [[nodiscard]] double rowMerit(const Eigen::VectorXd& activity, const Eigen::VectorXd& spread) const {
    const Program& judge = *program_.judge;
    double sum = 0.0;
    for (Eigen::Index i = 0; i < activity.size(); ++i) {
      const double around = squares_.size() > 0 ? std::sqrt(std::max(0.0, spread[i])) : 0.0;
      const double miss =
          std::max({0.0, judge.rowLower[i] - activity[i] + around, activity[i] + around - judge.rowUpper[i]});
      const double price = judge.price[i] < kInfinity ? judge.price[i] : kHardPrice / hardScale_[i];
      sum += price * miss;
    }
    return stage_.kind == Stage::Kind::LeastViolation ? sum : 1e6 * std::max(0.0, sum - stage_.budget);
  }
  [[nodiscard]] double columnCost(Eigen::Index j, double z) const {
    const Program& judge = *program_.judge;
    const double x = z * program_.unit[j];
    const double distance = x - judge.centre[j];
    const double cost = judge.curvature[j] * distance * distance + judge.cost[j] * x;
    return stage_.kind == Stage::Kind::LeastViolation ? 1e-9 * cost : cost;
  }
  [[nodiscard]] double columnMerit(const Eigen::VectorXd& z) const {
    double sum = 0.0;
    for (Eigen::Index j = 0; j < z.size(); ++j) sum += columnCost(j, z[j]);
    return sum;
  }

  const ScaledProgram& program_;
  const Stage& stage_;
  Eigen::MatrixXd rows_;     // per step
  Eigen::MatrixXd squares_;  // of the scatter per step; empty where there is none
  Eigen::VectorXd z_;
  Eigen::VectorXd activity_;
  Eigen::VectorXd spread_;
  Eigen::VectorXd hardScale_;
  Eigen::VectorXd tried_;
  Eigen::VectorXd triedSpread_;
};

bool improveOnce(Mover& mover, Eigen::Index columns, bool withPairs) {
  const double now = mover.merit();
  double best = now - 1e-12 * (1.0 + std::abs(now));
  Eigen::Index first = -1;
  Eigen::Index second = -1;
  double firstBy = 0.0;
  double secondBy = 0.0;
  for (Eigen::Index j = 0; j < columns; ++j) {
    for (const double by : {1.0, -1.0}) {
      if (!mover.allowed(j, mover.z()[j] + by)) continue;
      if (const double merit = mover.tryMove(j, by, -1, 0.0); merit < best) {
        best = merit;
        first = j;
        firstBy = by;
        second = -1;
      }
      for (Eigen::Index k = j + 1; withPairs && k < columns; ++k) {
        for (const double otherBy : {1.0, -1.0}) {
          if (!mover.allowed(k, mover.z()[k] + otherBy)) continue;
          if (const double merit = mover.tryMove(j, by, k, otherBy); merit < best) {
            best = merit;
            first = j;
            firstBy = by;
            second = k;
            secondBy = otherBy;
          }
        }
      }
    }
  }
  if (first < 0) return false;
  mover.move(first, firstBy);
  if (second >= 0) mover.move(second, secondBy);
  return true;
}

}  // namespace

Incumbent evaluate(const ScaledProgram& program, Eigen::VectorXd z) {
  const Eigen::VectorXd x = program.toJudge(z);
  z.tail(z.size() - x.size()).setZero();  // violations of tangents, which follow from the rest
  return {std::move(z), elasticViolation(*program.judge, x), objectiveValue(*program.judge, x)};
}

bool isAcceptable(const ScaledProgram& program, const Stage& stage, const Incumbent& candidate) {
  const Eigen::VectorXd& z = candidate.z;
  if ((z.array() < program.lower.array() - 1e-9).any() || (z.array() > program.upper.array() + 1e-9).any())
    return false;
  if (hardViolation(*program.judge, program.toJudge(z)) > kHardTolerance) return false;
  if (stage.kind != Stage::Kind::LeastViolation && candidate.violation > stage.budget) return false;
  return choicesHold(program, z);
}

bool isBetter(const Stage& stage, const Incumbent& a, const Incumbent& b) {
  return stage.kind == Stage::Kind::LeastViolation ? a.violation < b.violation : a.objective < b.objective;
}

Incumbent improveOnGrid(const ScaledProgram& program, const Stage& stage, Eigen::VectorXd z) {
  for (Eigen::Index j = 0; j < z.size(); ++j) {
    if (program.onGrid[std::size_t(j)] != 0) z[j] = std::round(z[j]);
    z[j] = std::clamp(z[j], program.lower[j], program.upper[j]);
    if (z[j] > 0 && z[j] < program.threshold[j])
      z[j] = program.threshold[j] > 2 * z[j] ? 0.0 : program.threshold[j];
    z[j] = std::clamp(z[j], program.lower[j], program.upper[j]);
  }
  Mover mover(program, stage, z.head(program.judgedColumns()));
  const auto columns = static_cast<double>(program.judgedColumns());
  const double aRound = 2.0 * columns * columns * static_cast<double>(program.judge->rowCount());
  const bool withPairs = aRound <= kMostWork;
  const int most = withPairs ? static_cast<int>(std::min(kMostRounds, kMostWork / aRound)) : int(kMostRounds);
  for (int rounds = 0; rounds < most && improveOnce(mover, program.judgedColumns(), withPairs); ++rounds) {
  }
  z.head(program.judgedColumns()) = mover.z();
  return evaluate(program, std::move(z));
}

}  // namespace tarebowl::solver
