// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous_solver.h"
#include "core/solver/scaled_program.h"
#include "core/solver/solve.h"

#include <string>

namespace tarebowl::solver {

/// Limits of the columns, in scaled terms; a search over choices narrows them.
struct Box {
  Eigen::VectorXd lower;
  Eigen::VectorXd upper;
};

struct ContinuousAnswer {
  Status status = Status::Failed;
  std::string reason;
  Eigen::VectorXd z;
  double violation = 0.0;
  double objective = 0.0;
  Eigen::VectorXd rowMultipliers;  ///< of the scaled rows; > 0 where the upper bound pushes
  bool pressesGenerousLimit = false;
};

/// Stage 1 over the box, no grid and no choices: exact, its optimality conditions verified.
[[nodiscard]] ContinuousAnswer leastViolation(const ScaledProgram& program, const Box& box);
/// Stage 2 over the box within the budget of leastViolation: the quadratic or the linear objective.
[[nodiscard]] ContinuousAnswer leastObjective(const ScaledProgram& program, const Box& box,
                                              double leastViolation);
/// Both stages, in one run where the objective is quadratic.
[[nodiscard]] ContinuousAnswer leastOfBoth(const ScaledProgram& program, const Box& box);

}  // namespace tarebowl::solver
