// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/solve.h"

#include <functional>
#include <vector>

namespace tarebowl::solver {

/// What holds an answer of any amounts in place: the multipliers of the rows and of the limits of the
/// columns, > 0 where the upper bound pushes.
struct Pressure {
  Status status = Status::Failed;
  Eigen::VectorXd x;
  Eigen::VectorXd rows;
  Eigen::VectorXd columns;
};

enum class Asked {
  Violation,  ///< of the least violation
  Objective   ///< of the best objective where no violation is needed
};

/// The program's grid and choices are not looked at; with scatter only the objective can be asked about.
[[nodiscard]] Pressure pressureOf(const Program& program, Asked asked);

/// The direction in which each row and each column's limit pushes: -1, 0 or 1.
struct Shape {
  std::vector<signed char> rows;
  std::vector<signed char> columns;
  bool operator==(const Shape&) const = default;
};
/// A multiplier next to nothing beside the largest one does not push.
[[nodiscard]] Shape shapeOf(const Pressure& pressure);

/// How far t may go from 0 towards most (of either sign) with the answer to at(t) keeping its shape, to
/// 1e-7 of most, by halving: the answers of one shape lie in one interval. most itself where it is kept all
/// the way.
[[nodiscard]] double reachOfShape(const std::function<Program(double)>& at, Asked asked, const Shape& shape,
                                  double most);

}  // namespace tarebowl::solver
