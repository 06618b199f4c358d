// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/parametric.h"

#include <cmath>
#include <utility>

namespace tarebowl::solver {

/// The walk along a path from event to event, whatever method finds the events. A Mover knows its solver:
///   solver()               with solve(Budget), x(), status() ...
///   place(bound)           tells it where the bound is
///   start(direction)       says which bound moves, and which way (1 or -1)
///   reach()                how far the next event is
///   advance(length)        goes there
///   pass()                 changes the basis or working set; false: beyond there is no answer
///   read()                 the answer anew, verified; false: it is not what it should be
template <class Mover>
class PathWalk {
 public:
  PathWalk(Mover mover, double from, double to)
      : mover_(std::move(mover)), at_(from), to_(to), direction_(to < from ? -1.0 : 1.0) {}

  ParametricPath run() {
    mover_.place(at_);
    if (solveHere() != Status::Optimal) return ended(mover_.solver().status());
    record();
    const Eigen::Index most = 20 * (mover_.solver().rowCount() + mover_.solver().columnCount()) + 200;
    mover_.start(direction_);
    for (Eigen::Index event = 0; event < most; ++event) {
      const double left = std::abs(to_ - at_);
      const double length = std::min(mover_.reach(), left);
      mover_.advance(length);
      const bool isLast = length >= left;
      at_ = isLast ? to_ : at_ + direction_ * length;
      if (length > kSamePoint * (1.0 + std::abs(at_)) || isLast) {
        if (!arrive()) return ended(mover_.solver().status());
      }
      if (isLast) {
        path_.isComplete = true;
        return ended(Status::Optimal);
      }
      if (!mover_.pass()) return finish();
    }
    return ended(Status::Failed);
  }

 private:
  static constexpr double kSamePoint = 1e-13;

  Status solveHere() { return mover_.solver().solve(ContinuousSolver::Budget::Exact); }

  /// A breakpoint is verified; where rounding has piled up, the answer is worked out anew.
  [[nodiscard]] bool arrive() {
    mover_.place(at_);
    if (!mover_.read()) {
      mover_.solver().forget();
      if (solveHere() != Status::Optimal) return false;
    }
    record();
    return true;
  }

  void record() {
    const auto& solver = mover_.solver();
    path_.points.push_back({at_, solver.x(), solver.rowMultipliers(), solver.violationMultipliers(),
                            solver.violation(), solver.objective()});
  }

  /// The path ends before its last bound: so it does, or rounding says so.
  ParametricPath finish() {
    mover_.place(to_);
    mover_.solver().forget();
    const Status beyond = solveHere();
    mover_.place(at_);
    mover_.solver().forget();
    return ended(beyond == Status::Infeasible ? Status::Optimal : Status::Failed);
  }

  ParametricPath ended(Status status) {
    path_.status = status;
    path_.reason =
        status == Status::Failed ? "path: the events did not come to an end" : mover_.solver().reason();
    return std::move(path_);
  }

  Mover mover_;
  double at_;
  double to_;
  double direction_;
  ParametricPath path_;
};

}  // namespace tarebowl::solver
