// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/dual_active_set.h"

#include "core/solver/orthogonal_factor.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kHolds = 1e-12;
constexpr double kDependent = 1e-20;
constexpr double kRounding = 1e-8;  // a contradiction smaller than this is one of rounding, not of the rules

enum class State : char { Inactive, Active, Capped };

/// One bound of a row or a column, normalised: sign (normal y) <= limit, multiplier in [0, cap].
struct Constraint {
  State state = State::Inactive;
  double sign = 1.0;
  double multiplier = 0.0;
  double tolerance = kHolds;
};

/// In y = sqrt(hessian) (z - centre) the objective is 1/2 |y|^2 and y = - sum multiplier sign normal.
class DualActiveSet {
 public:
  explicit DualActiveSet(const QuadraticProgram& program)
      : program_(program),
        n_(program.rows.cols()),
        m_(program.rows.rows()),
        root_(program.hessian.cwiseSqrt()),
        normals_(program.rows * root_.cwiseInverse().asDiagonal()),
        rowNorm_(m_),
        low_(m_ + n_),
        high_(m_ + n_),
        cap_(m_ + n_),
        constraints_(std::size_t(m_ + n_)),
        factor_(n_),
        y_(Eigen::VectorXd::Zero(n_)) {
    const Eigen::VectorXd atCentre = program.rows * program.centre;
    for (Eigen::Index i = 0; i < m_; ++i) {
      rowNorm_[i] = normals_.row(i).norm();
      if (rowNorm_[i] <= 0) rowNorm_[i] = 1.0;
      normals_.row(i) /= rowNorm_[i];
      low_[i] = (program.rowLower[i] - atCentre[i]) / rowNorm_[i];
      high_[i] = (program.rowUpper[i] - atCentre[i]) / rowNorm_[i];
      cap_[i] = program.price[i] * rowNorm_[i];
    }
    low_.tail(n_) = (program.lower - program.centre).cwiseProduct(root_);
    high_.tail(n_) = (program.upper - program.centre).cwiseProduct(root_);
    cap_.tail(n_).setConstant(kInfinity);
  }

  QuadraticSolution run() {
    QuadraticSolution solution;
    const int most = 100 * int(n_ + m_) + 100;
    for (; solution.iterations < most; ++solution.iterations) {
      const Eigen::Index p = mostViolated();
      if (p < 0) {
        solution.status = QuadraticSolution::Status::Optimal;
        break;
      }
      if (!resolve(p, solution.iterations, most)) {
        solution.status = QuadraticSolution::Status::Infeasible;
        solution.blockingRows = blocking(p);
        return solution;
      }
    }
    refine();
    fill(solution);
    return solution;
  }

 private:
  [[nodiscard]] Eigen::VectorXd normal(Eigen::Index k) const {
    if (k < m_) return normals_.row(k).transpose();
    return Eigen::VectorXd::Unit(n_, k - m_);
  }
  [[nodiscard]] double activity(Eigen::Index k) const {
    return k < m_ ? normals_.row(k).dot(y_) : y_[k - m_];
  }
  [[nodiscard]] double limit(Eigen::Index k, double sign) const { return sign > 0 ? high_[k] : -low_[k]; }

  /// The constraint furthest from where its multiplier says it is: an inactive one beyond a bound, or a
  /// capped one within.
  [[nodiscard]] Eigen::Index mostViolated() {
    Eigen::Index worst = -1;
    double most = 0.0;
    const Eigen::VectorXd rowActivity = normals_ * y_;
    for (Eigen::Index k = 0; k < m_ + n_; ++k) {
      Constraint& constraint = constraints_[std::size_t(k)];
      if (constraint.state == State::Active) continue;
      const double at = k < m_ ? rowActivity[k] : y_[k - m_];
      double by = 0.0;
      double sign = constraint.sign;
      if (constraint.state == State::Capped) {
        by = limit(k, sign) - sign * at;
      } else {
        sign = at - high_[k] > low_[k] - at ? 1.0 : -1.0;
        by = sign * at - limit(k, sign);
      }
      if (by <= constraint.tolerance * (1.0 + std::abs(at)) || by <= most) continue;
      most = by;
      worst = k;
      if (constraint.state == State::Inactive) constraint.sign = sign;
    }
    return worst;
  }

  /// Moves until constraint p is where its multiplier says, letting active ones go on the way. False: it
  /// cannot be.
  bool resolve(Eigen::Index p, int& iterations, int most) {
    Constraint& own = constraints_[std::size_t(p)];
    const double direction = own.state == State::Capped ? -1.0 : 1.0;
    const Eigen::VectorXd signedNormal = own.sign * normal(p);
    Eigen::VectorXd share;
    for (; iterations < most; ++iterations) {
      const Eigen::VectorXd outside = factor_.split(signedNormal, share);
      const double length = outside.squaredNorm();
      const double violation = direction * (own.sign * activity(p) - limit(p, own.sign));
      const double full = length > kDependent ? std::max(0.0, violation) / length : kInfinity;
      const double room = direction > 0 ? cap_[p] - own.multiplier : own.multiplier;
      double blocked = kInfinity;
      Eigen::Index blocker = -1;
      for (Eigen::Index a = 0; a < share.size(); ++a) {
        const Constraint& active = constraints_[std::size_t(active_[std::size_t(a)])];
        const double rate = -direction * share[a];
        double reach = kInfinity;
        if (rate < -1e-14) reach = active.multiplier / -rate;
        if (rate > 1e-14) reach = (cap_[active_[std::size_t(a)]] - active.multiplier) / rate;
        if (reach < blocked) {
          blocked = reach;
          blocker = a;
        }
      }
      const double step = std::min({full, room, blocked});
      if (!(step < kInfinity)) return isRounding(p, direction);
      move(own, direction, step, outside, share);
      if (step == blocked && step < full && step < room) {
        release(blocker, -direction * share[blocker] > 0);
        continue;
      }
      if (step == full && step < room) {
        own.state = State::Active;
        factor_.append();
        active_.push_back(p);
      } else {
        own.state = direction > 0 ? State::Capped : State::Inactive;
        own.multiplier = direction > 0 ? cap_[p] : 0.0;
      }
      return true;
    }
    return true;
  }

  /// Nothing can give way to constraint p. At a corner where more constraints meet than there are columns
  /// that happens to one that holds there too, but for the rounding of large multipliers: such a one is let
  /// be.
  bool isRounding(Eigen::Index p, double direction) {
    refine();
    Constraint& own = constraints_[std::size_t(p)];
    const double at = own.sign * activity(p);
    if (direction * (at - limit(p, own.sign)) > kRounding * (1.0 + std::abs(at))) return false;
    own.tolerance = kRounding;
    return true;
  }

  void move(Constraint& own, double direction, double step, const Eigen::VectorXd& outside,
            const Eigen::VectorXd& share) {
    own.multiplier += direction * step;
    y_ -= (direction * step) * outside;
    for (Eigen::Index a = 0; a < share.size(); ++a) {
      constraints_[std::size_t(active_[std::size_t(a)])].multiplier -= direction * step * share[a];
    }
  }

  void release(Eigen::Index position, bool atCap) {
    const Eigen::Index k = active_[std::size_t(position)];
    Constraint& constraint = constraints_[std::size_t(k)];
    constraint.state = atCap ? State::Capped : State::Inactive;
    constraint.multiplier = atCap ? cap_[k] : 0.0;
    factor_.remove(position);
    active_.erase(active_.begin() + position);
  }

  /// One step of iterative refinement: y anew from the multipliers, then the active rows' residuals removed.
  void refine() {
    for (int round = 0; round < 2; ++round) {
      y_.setZero();
      for (Eigen::Index k = 0; k < m_ + n_; ++k) {
        const Constraint& constraint = constraints_[std::size_t(k)];
        if (constraint.multiplier != 0.0) y_ -= constraint.multiplier * constraint.sign * normal(k);
      }
      if (active_.empty()) return;
      Eigen::VectorXd residual(Eigen::Index(active_.size()));
      for (std::size_t a = 0; a < active_.size(); ++a) {
        const double sign = constraints_[std::size_t(active_[a])].sign;
        residual[Eigen::Index(a)] = sign * activity(active_[a]) - limit(active_[a], sign);
      }
      const Eigen::VectorXd correction = factor_.solveNormal(residual);
      for (std::size_t a = 0; a < active_.size(); ++a) {
        Constraint& constraint = constraints_[std::size_t(active_[a])];
        constraint.multiplier += correction[Eigen::Index(a)];
        y_ -= correction[Eigen::Index(a)] * constraint.sign * normal(active_[a]);
      }
    }
  }

  std::vector<Eigen::Index> blocking(Eigen::Index p) const {
    std::vector<Eigen::Index> rows;
    if (p < m_) rows.push_back(p);
    for (const Eigen::Index k : active_) {
      if (k < m_) rows.push_back(k);
    }
    return rows;
  }

  void fill(QuadraticSolution& solution) const {
    solution.z = program_.centre + y_.cwiseQuotient(root_);
    solution.rowMultipliers.setZero(m_);
    solution.columnMultipliers.setZero(n_);
    for (Eigen::Index k = 0; k < m_ + n_; ++k) {
      const Constraint& constraint = constraints_[std::size_t(k)];
      const double signedMultiplier = constraint.sign * constraint.multiplier;
      if (k < m_)
        solution.rowMultipliers[k] = signedMultiplier / rowNorm_[k];
      else
        solution.columnMultipliers[k - m_] = signedMultiplier * root_[k - m_];
      if (k >= m_ && constraint.state == State::Active) {
        solution.z[k - m_] = constraint.sign > 0 ? program_.upper[k - m_] : program_.lower[k - m_];
      }
    }
  }

  const QuadraticProgram& program_;
  Eigen::Index n_;
  Eigen::Index m_;
  Eigen::VectorXd root_;
  RowMatrix normals_;
  Eigen::VectorXd rowNorm_;
  Eigen::VectorXd low_;
  Eigen::VectorXd high_;
  Eigen::VectorXd cap_;
  std::vector<Constraint> constraints_;
  std::vector<Eigen::Index> active_;
  OrthogonalFactor factor_;
  Eigen::VectorXd y_;
};

}  // namespace

QuadraticSolution solveQuadratic(const QuadraticProgram& program) {
  return DualActiveSet(program).run();
}

}  // namespace tarebowl::solver
