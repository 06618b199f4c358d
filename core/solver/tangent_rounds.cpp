// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/tangent_rounds.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr int kMostRounds = 120;
constexpr double kClosed = 5e-10;
constexpr double kIdleSlack = 1e-6;
constexpr int kIdleRounds = 6;
constexpr double kProximal =
    1e-4;  // curvature of the violation columns, about their last value: vanishes in the limit

/// One bound of a row with scatter: sign (rows_row x) + ||scatter_row x|| <= limit.
struct Cone {
  Eigen::Index row;
  double sign;
  double limit;
  Eigen::Index column;  ///< of its violation; -1 where the row is hard
};

struct Tangent {
  std::size_t cone;
  Eigen::VectorXd coefficients;
  int idle = 0;  ///< rounds since it last held the answer back
};

class TangentScheme {
 public:
  TangentScheme(const Program& program, const std::vector<Eigen::VectorXd>& touching)
      : program_(program), n_(program.variableCount()), onGrid_((program.step.array() > 0).any()) {
    for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
      if (program.scatter->row(i).cwiseAbs().maxCoeff() <= 0) {
        plain_.push_back(i);
        continue;
      }
      // Both bounds of a row share one violation, the larger of the two.
      const Eigen::Index column = program.price[i] < kInfinity ? n_ + violations_++ : -1;
      if (column >= 0) violationRow_.push_back(i);
      if (program.rowUpper[i] < kInfinity) cones_.push_back({i, 1.0, program.rowUpper[i], column});
      if (program.rowLower[i] > -kInfinity) cones_.push_back({i, -1.0, -program.rowLower[i], column});
    }
    last_ = Eigen::VectorXd::Zero(violations_);
    for (std::size_t c = 0; c < cones_.size(); ++c) {
      for (const Eigen::VectorXd& x : touching) addTangent(c, x);
      if (touching.empty()) addTangent(c, program.centre);
    }
  }

  Solution run(const Limits& limits) {
    const auto deadline = std::chrono::steady_clock::now() + limits.deadline;
    Solution best;
    best.status = Status::Failed;
    best.reason = "chance rows: tangents did not close";
    for (int round = 0; round < kMostRounds; ++round) {
      Limits left = limits;
      left.deadline =
          std::chrono::duration_cast<std::chrono::milliseconds>(deadline - std::chrono::steady_clock::now());
      if (left.deadline.count() <= 0 || limits.stop.stop_requested()) return best;
      Solution relaxed = solve(relaxation(), left);
      if (relaxed.status != Status::Optimal) return relaxed;
      Solution candidate = asCandidate(relaxed);
      dropIdleTangents(relaxed.x);
      const bool closed = addViolatedTangents(relaxed.x) == 0 && settled(relaxed.x);
      last_ = relaxed.x.tail(violations_);
      keepBetter(best, candidate, relaxed.violation);
      if (closed) return candidate;
    }
    return best;
  }

 private:
  void addTangent(std::size_t c, const Eigen::VectorXd& x) {
    const Cone& cone = cones_[c];
    const Eigen::VectorXd scatter = program_.scatter->row(cone.row).transpose();
    const double spread = scatter.cwiseProduct(x).norm();
    Eigen::VectorXd coefficients = cone.sign * program_.rows.row(cone.row).transpose();
    if (spread > 0) coefficients += scatter.cwiseProduct(scatter).cwiseProduct(x) / spread;
    tangents_.push_back({c, std::move(coefficients)});
  }

  [[nodiscard]] Eigen::Index addViolatedTangents(const Eigen::VectorXd& extended) {
    const Eigen::VectorXd x = extended.head(n_);
    Eigen::Index added = 0;
    for (std::size_t c = 0; c < cones_.size(); ++c) {
      const Cone& cone = cones_[c];
      const double spread = program_.scatter->row(cone.row).transpose().cwiseProduct(x).norm();
      const double violation = cone.column >= 0 ? extended[cone.column] : 0.0;
      const double excess = cone.sign * program_.rows.row(cone.row).dot(x) + spread - cone.limit - violation;
      if (excess <= kClosed) continue;
      addTangent(c, x);
      ++added;
    }
    return added;
  }

  /// Forgets tangents that lie far from where the answer has settled; one that is missed is taken again.
  void dropIdleTangents(const Eigen::VectorXd& extended) {
    for (Tangent& tangent : tangents_) {
      const Cone& cone = cones_[tangent.cone];
      const double violation = cone.column >= 0 ? extended[cone.column] : 0.0;
      const double slack = cone.limit + violation - tangent.coefficients.dot(extended.head(n_));
      tangent.idle = slack > kIdleSlack ? tangent.idle + 1 : 0;
    }
    std::erase_if(tangents_, [](const Tangent& tangent) { return tangent.idle > kIdleRounds; });
  }

  /// The violation columns have stopped moving, so that their proximal term weighs nothing.
  [[nodiscard]] bool settled(const Eigen::VectorXd& extended) const {
    return onGrid_ || violations_ == 0 || (extended.tail(violations_) - last_).cwiseAbs().maxCoeff() <= 1e-7;
  }

  [[nodiscard]] Program relaxation() const {
    const Eigen::Index n = n_ + violations_;
    const Eigen::Index m = Eigen::Index(plain_.size()) + violations_ + Eigen::Index(tangents_.size());
    Program program;
    program.rows.setZero(m, n);
    program.rowLower.setConstant(m, -kInfinity);
    program.rowUpper.setConstant(m, kInfinity);
    program.price.setConstant(m, kInfinity);
    program.lower = extend(program_.lower, 0.0);
    program.upper = extend(program_.upper, kInfinity);
    program.step = extend(program_.step, 0.0);
    program.cost = extend(program_.cost, 0.0);
    program.centre = extend(program_.centre, 0.0);
    program.centre.tail(violations_) = last_;
    const bool quadratic = (program_.curvature.array() > 0).any() && !onGrid_;
    program.curvature = extend(program_.curvature, quadratic ? kProximal : 0.0);
    program.choices = program_.choices;
    Eigen::Index at = 0;
    for (const Eigen::Index i : plain_) {
      program.rows.row(at).head(n_) = program_.rows.row(i);
      program.rowLower[at] = program_.rowLower[i];
      program.rowUpper[at] = program_.rowUpper[i];
      program.price[at++] = program_.price[i];
    }
    for (Eigen::Index v = 0; v < violations_; ++v) {
      program.rows(at, n_ + v) = 1.0;
      program.rowUpper[at] = 0.0;
      program.price[at++] = program_.price[violationRow_[std::size_t(v)]];
    }
    for (const Tangent& tangent : tangents_) {
      const Cone& cone = cones_[tangent.cone];
      program.rows.row(at).head(n_) = tangent.coefficients.transpose();
      if (cone.column >= 0) program.rows(at, cone.column) = -1.0;
      program.rowUpper[at++] = cone.limit;
    }
    return program;
  }

  [[nodiscard]] Eigen::VectorXd extend(const Eigen::VectorXd& own, double value) const {
    Eigen::VectorXd all(n_ + violations_);
    all << own, Eigen::VectorXd::Constant(violations_, value);
    return all;
  }

  [[nodiscard]] Solution asCandidate(const Solution& relaxed) const {
    Solution candidate = relaxed;
    candidate.x = relaxed.x.head(n_);
    candidate.violation = elasticViolation(program_, candidate.x);
    candidate.objective = objectiveValue(program_, candidate.x);
    candidate.multipliers.setZero(program_.rowCount());
    if (relaxed.multipliers.size() == 0) return candidate;
    Eigen::Index at = 0;
    for (const Eigen::Index i : plain_) candidate.multipliers[i] = relaxed.multipliers[at++];
    at += violations_;
    for (const Tangent& tangent : tangents_) {
      const Cone& cone = cones_[tangent.cone];
      if (at < relaxed.multipliers.size())
        candidate.multipliers[cone.row] += cone.sign * relaxed.multipliers[at++];
    }
    return candidate;
  }

  /// On a grid an unfinished scheme still has answers: the best of them, with how far the bound lies below.
  void keepBetter(Solution& best, Solution candidate, double bound) const {
    if (!onGrid_ || hardViolation(program_, candidate.x) > 1e-9) return;
    if (best.status == Status::Optimal && best.violation <= candidate.violation) return;
    candidate.gap =
        std::max(candidate.gap, (candidate.violation - bound) / std::max(1e-12, candidate.violation));
    best = std::move(candidate);
  }

  const Program& program_;
  Eigen::Index n_;
  bool onGrid_;
  Eigen::Index violations_ = 0;
  std::vector<Eigen::Index> plain_;
  std::vector<Eigen::Index> violationRow_;
  std::vector<Cone> cones_;
  std::vector<Tangent> tangents_;
  Eigen::VectorXd last_;
};

}  // namespace

Solution solveByTangents(const Program& program, const std::vector<Eigen::VectorXd>& touching,
                         const Limits& limits) {
  return TangentScheme(program, touching).run(limits);
}

}  // namespace tarebowl::solver
