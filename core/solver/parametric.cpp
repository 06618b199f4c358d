// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/parametric.h"

#include "core/solver/path_walk.h"

namespace tarebowl::solver {
namespace {

using Kind = MovingBound::Kind;

bool isOfRow(Kind kind) {
  return kind == Kind::RowLower || kind == Kind::RowUpper || kind == Kind::RowBoth;
}
bool movesLower(Kind kind) {
  return kind == Kind::RowLower || kind == Kind::ColumnLower || kind == Kind::RowBoth;
}
bool movesUpper(Kind kind) {
  return kind == Kind::RowUpper || kind == Kind::ColumnUpper || kind == Kind::RowBoth;
}

struct Bounds {
  const Eigen::VectorXd& rowLower;
  const Eigen::VectorXd& rowUpper;
  const Eigen::VectorXd& lower;
  const Eigen::VectorXd& upper;
};

template <class Solver>
void placeBound(Solver& solver, MovingBound moving, double bound, const Bounds& now) {
  const Eigen::Index k = moving.index;
  const bool lower = movesLower(moving.kind);
  const bool upper = movesUpper(moving.kind);
  if (isOfRow(moving.kind))
    solver.setRowBounds(k, lower ? bound : now.rowLower[k], upper ? bound : now.rowUpper[k]);
  else
    solver.setColumnBounds(k, lower ? bound : now.lower[k], upper ? bound : now.upper[k]);
}

}  // namespace

/// What a path needs of the inside of a solver for quadratic objectives.
class PathFollower {
 public:
  PathFollower(ContinuousSolver& solver, MovingBound moving) : solver_(solver), moving_(moving) {}

  ContinuousSolver& solver() { return solver_; }

  void place(double bound) {
    placeBound(solver_, moving_, bound,
               {solver_.rowLower_, solver_.rowUpper_, solver_.lower_, solver_.upper_});
  }

  void start(double direction) {
    const NormalForm& form = solver_.set_.form();
    const double lower = movesLower(moving_.kind) ? direction : 0.0;
    const double upper = movesUpper(moving_.kind) ? direction : 0.0;
    solver_.path_.clearRates();
    if (isOfRow(moving_.kind))
      solver_.path_.setRowRate(form, moving_.index, lower, upper);
    else
      solver_.path_.setColumnRate(form, moving_.index, lower, upper);
  }

  double reach() {
    solver_.path_.direct(solver_.set_);
    return solver_.path_.reach(solver_.set_);
  }
  void advance(double length) { solver_.path_.advance(solver_.set_, length); }
  bool pass() { return solver_.path_.pass(solver_.set_) != ActivePath::Passed::Ended; }
  bool read() { return solver_.readAtLeastViolation() && solver_.isVerified(solver_.lambda_); }

 private:
  ContinuousSolver& solver_;
  MovingBound moving_;
};

/// The same of a solver for linear ones.
class LinearPath {
 public:
  LinearPath(LinearSolver& solver, MovingBound moving) : solver_(solver), moving_(moving) {}

  LinearSolver& solver() { return solver_; }

  void place(double bound) {
    placeBound(solver_, moving_, bound,
               {solver_.rowLower_, solver_.rowUpper_, solver_.lower_, solver_.upper_});
  }

  void start(double direction) {
    const bool isRow = isOfRow(moving_.kind);
    const double rate = direction / (isRow ? solver_.rowScale_[moving_.index] : solver_.unit_);
    solver_.simplex_.setRates(moving_.index + (isRow ? solver_.columnCount() : 0),
                              movesLower(moving_.kind) ? rate : 0.0, movesUpper(moving_.kind) ? rate : 0.0);
  }

  double reach() {
    solver_.simplex_.direct();
    return solver_.simplex_.reach();
  }
  void advance(double length) { solver_.simplex_.advance(length); }
  bool pass() { return solver_.simplex_.pass() != LexicographicSimplex::Passed::Ended; }
  bool read() {
    solver_.simplex_.refresh();
    return solver_.readAtLeastViolation();
  }

 private:
  LinearSolver& solver_;
  MovingBound moving_;
};

ParametricPath followBound(ContinuousSolver& solver, MovingBound moving, double from, double to) {
  return PathWalk(PathFollower(solver, moving), from, to).run();
}

ParametricPath followBound(LinearSolver& solver, MovingBound moving, double from, double to) {
  return PathWalk(LinearPath(solver, moving), from, to).run();
}

}  // namespace tarebowl::solver
