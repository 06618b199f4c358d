// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous_solver.h"
#include "core/solver/linear_solver.h"

#include <vector>

namespace tarebowl::solver {

/// Which bound moves.
struct MovingBound {
  enum class Kind {
    RowLower,
    RowUpper,
    RowBoth,  ///< both bounds of a row together: it is held at one value
    ColumnLower,
    ColumnUpper
  };
  Kind kind = Kind::RowLower;
  Eigen::Index index = 0;
};

/// The answer where its shape changes. Multipliers are those on arrival: at a breakpoint they may jump.
struct Breakpoint {
  double bound = 0.0;
  Eigen::VectorXd x;
  Eigen::VectorXd rowMultipliers;        ///< of the objective, where violation costs lambda at least
  Eigen::VectorXd violationMultipliers;  ///< of the least violation
  double violation = 0.0;
  double objective = 0.0;
};

struct ParametricPath {
  Status status = Status::Failed;
  std::string_view reason;
  /// From the first bound to the last that has an answer; x is a straight line between neighbours.
  std::vector<Breakpoint> points;
  bool isComplete = false;  ///< false: beyond the last point the hard rows contradict each other
};

/// The exact path of the answer (least violation, then the best objective at that violation itself, no budget
/// spent) as one bound moves from a value to another. Breakpoints come from ratio tests on the active set or
/// the basis, not from samples; each is verified. Leaves the solver with the bound where the path ended.
[[nodiscard]] ParametricPath followBound(ContinuousSolver& solver, MovingBound moving, double from,
                                         double to);
/// The same of a linear objective. Of answers that cost the same it follows one; between breakpoints that
/// one, the violation and the objective are straight lines.
[[nodiscard]] ParametricPath followBound(LinearSolver& solver, MovingBound moving, double from, double to);

}  // namespace tarebowl::solver
