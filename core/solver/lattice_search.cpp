// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/lattice_search.h"

#include "core/solver/choice_rules.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kHardTolerance = 1e-9;

/// Keeps row activities up to date while single columns move, and prices a move without recomputing
/// everything.
class Mover {
 public:
  Mover(const ScaledProgram& program, const Stage& stage, Eigen::VectorXd z)
      : program_(program), stage_(stage), z_(std::move(z)), activity_(program.rows * z_) {}

  [[nodiscard]] double merit() const { return rowMerit(activity_) + columnMerit(z_); }
  [[nodiscard]] const Eigen::VectorXd& z() const { return z_; }

  bool allowed(Eigen::Index j, double value) const {
    if (value < program_.lower[j] || value > program_.upper[j]) return false;
    return value == 0.0 || value >= program_.threshold[j];
  }
  double tryMove(Eigen::Index j, double by, Eigen::Index other, double otherBy) const {
    Eigen::VectorXd activity = activity_ + by * program_.rows.col(j);
    if (other >= 0) activity += otherBy * program_.rows.col(other);
    double merit = rowMerit(activity) + columnMerit(z_);
    merit += columnCost(j, z_[j] + by) - columnCost(j, z_[j]);
    if (other >= 0) merit += columnCost(other, z_[other] + otherBy) - columnCost(other, z_[other]);
    return merit;
  }
  void move(Eigen::Index j, double by) {
    z_[j] += by;
    activity_ += by * program_.rows.col(j);
  }

 private:
  [[nodiscard]] double rowMerit(const Eigen::VectorXd& activity) const {
    double sum = 0.0;
    for (Eigen::Index i = 0; i < activity.size(); ++i) {
      const double miss =
          std::max({0.0, program_.rowLower[i] - activity[i], activity[i] - program_.rowUpper[i]});
      const double price = program_.price[i] < kInfinity ? program_.price[i] : 1e6;
      sum += price * miss;
    }
    return stage_.kind == Stage::Kind::LeastViolation ? sum : 1e6 * std::max(0.0, sum - stage_.budget);
  }
  [[nodiscard]] double columnCost(Eigen::Index j, double z) const {
    const Program& source = *program_.source;
    const double x = z * program_.unit[j];
    const double distance = x - source.centre[j];
    const double cost = source.curvature[j] * distance * distance + source.cost[j] * x;
    return stage_.kind == Stage::Kind::LeastViolation ? 1e-9 * cost : cost;
  }
  [[nodiscard]] double columnMerit(const Eigen::VectorXd& z) const {
    double sum = 0.0;
    for (Eigen::Index j = 0; j < z.size(); ++j) sum += columnCost(j, z[j]);
    return sum;
  }

  const ScaledProgram& program_;
  const Stage& stage_;
  Eigen::VectorXd z_;
  Eigen::VectorXd activity_;
};

bool improveOnce(Mover& mover, Eigen::Index columns) {
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
      for (Eigen::Index k = j + 1; k < columns; ++k) {
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
  const Eigen::VectorXd x = program.toSource(z);
  return {std::move(z), elasticViolation(*program.source, x), objectiveValue(*program.source, x)};
}

bool isAcceptable(const ScaledProgram& program, const Stage& stage, const Incumbent& candidate) {
  const Eigen::VectorXd& z = candidate.z;
  if ((z.array() < program.lower.array() - 1e-9).any() || (z.array() > program.upper.array() + 1e-9).any())
    return false;
  if (hardViolation(*program.source, program.toSource(z)) > kHardTolerance) return false;
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
  Mover mover(program, stage, std::move(z));
  for (int rounds = 0; rounds < 100 && improveOnce(mover, program.rows.cols()); ++rounds) {
  }
  return evaluate(program, mover.z());
}

}  // namespace tarebowl::solver
