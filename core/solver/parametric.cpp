// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/parametric.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {

/// What a path needs of the solver's inside.
class PathFollower {
 public:
  PathFollower(ContinuousSolver& solver, MovingBound moving, double from, double to)
      : solver_(solver), moving_(moving), at_(from), to_(to), direction_(to < from ? -1.0 : 1.0) {}

  ParametricPath run() {
    place();
    if (solver_.solve(ContinuousSolver::Budget::Exact) != Status::Optimal) return ended(solver_.status());
    record();
    const Eigen::Index most = 20 * (solver_.rowCount() + solver_.columnCount()) + 200;
    setRates();
    for (Eigen::Index event = 0; event < most; ++event) {
      solver_.path_.direct(solver_.set_);
      const double left = std::abs(to_ - at_);
      const double length = std::min(solver_.path_.reach(solver_.set_), left);
      solver_.path_.advance(solver_.set_, length);
      const bool isLast = length >= left;
      at_ = isLast ? to_ : at_ + direction_ * length;
      if (length > kSamePoint * (1.0 + std::abs(at_)) || isLast) {
        if (!arrive()) return ended(solver_.status());
      }
      if (isLast) {
        path_.isComplete = true;
        return ended(Status::Optimal);
      }
      if (solver_.path_.pass(solver_.set_) == ActivePath::Passed::Ended) return finish();
    }
    return ended(Status::Failed);
  }

 private:
  static constexpr double kSamePoint = 1e-13;

  /// Tells the solver where the bound is.
  void place() {
    const Eigen::Index k = moving_.index;
    switch (moving_.kind) {
      case MovingBound::Kind::RowLower:
        solver_.setRowBounds(k, at_, solver_.rowUpper_[k]);
        break;
      case MovingBound::Kind::RowUpper:
        solver_.setRowBounds(k, solver_.rowLower_[k], at_);
        break;
      case MovingBound::Kind::RowBoth:
        solver_.setRowBounds(k, at_, at_);
        break;
      case MovingBound::Kind::ColumnLower:
        solver_.setColumnBounds(k, at_, solver_.upper_[k]);
        break;
      case MovingBound::Kind::ColumnUpper:
        solver_.setColumnBounds(k, solver_.lower_[k], at_);
        break;
    }
  }

  void setRates() {
    const NormalForm& form = solver_.set_.form();
    ActivePath& path = solver_.path_;
    const double d = direction_;
    path.clearRates();
    switch (moving_.kind) {
      case MovingBound::Kind::RowLower:
        path.setRowRate(form, moving_.index, d, 0.0);
        break;
      case MovingBound::Kind::RowUpper:
        path.setRowRate(form, moving_.index, 0.0, d);
        break;
      case MovingBound::Kind::RowBoth:
        path.setRowRate(form, moving_.index, d, d);
        break;
      case MovingBound::Kind::ColumnLower:
        path.setColumnRate(form, moving_.index, d, 0.0);
        break;
      case MovingBound::Kind::ColumnUpper:
        path.setColumnRate(form, moving_.index, 0.0, d);
        break;
    }
  }

  /// A breakpoint is verified; where rounding has piled up, the answer is worked out anew.
  [[nodiscard]] bool arrive() {
    place();
    if (!solver_.readAtLeastViolation()) {
      solver_.forget();
      if (solver_.solve(ContinuousSolver::Budget::Exact) != Status::Optimal) return false;
    }
    record();
    return true;
  }

  void record() {
    path_.points.push_back({at_, solver_.x(), solver_.rowMultipliers(), solver_.violationMultipliers(),
                            solver_.violation(), solver_.objective()});
  }

  /// The path ends before its last bound: so it does, or rounding says so.
  ParametricPath finish() {
    const double reached = at_;
    at_ = to_;
    place();
    solver_.forget();
    const Status beyond = solver_.solve(ContinuousSolver::Budget::Exact);
    at_ = reached;
    place();
    solver_.forget();
    return ended(beyond == Status::Infeasible ? Status::Optimal : Status::Failed);
  }

  ParametricPath ended(Status status) {
    path_.status = status;
    path_.reason = status == Status::Failed ? "path: the events did not come to an end" : solver_.reason();
    return std::move(path_);
  }

  ContinuousSolver& solver_;
  MovingBound moving_;
  double at_;
  double to_;
  double direction_;
  ParametricPath path_;
};

ParametricPath followBound(ContinuousSolver& solver, MovingBound moving, double from, double to) {
  return PathFollower(solver, moving, from, to).run();
}

}  // namespace tarebowl::solver
