// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <vector>

/// Questions to a program as general solvers take them: violations in columns of their own.
namespace tarebowl::reference {

/// least cost z, row_lower <= entries z <= row_upper, lower <= z <= upper: columns x first, then what each
/// elastic row falls short and what it exceeds; rows first as in the program.
struct LinearProgram {
  struct Entry {
    int row;
    int column;
    double value;
  };
  std::vector<double> cost, lower, upper, rowLower, rowUpper;
  std::vector<Entry> entries;
  std::vector<char> whole;     ///< the column takes whole numbers
  std::vector<double> xUnits;  ///< x_j = xUnits_j z_j
  double costUnit = 1.0;       ///< cost z is this many times the question's value

  [[nodiscard]] int rowCount() const { return static_cast<int>(rowLower.size()); }
  [[nodiscard]] int columnCount() const { return static_cast<int>(cost.size()); }
};

/// Stage 1: least price times violation. Grams count in whole steps where the program has them; choices and
/// scatter are not offered.
[[nodiscard]] LinearProgram leastShortfall(const solver::Program& program);

/// Stage 2 of a linear objective: least cost, at most so much price times violation.
[[nodiscard]] LinearProgram leastCost(const solver::Program& program, double budget);

/// The goal programme: least price times violation and sum of weight_j |x_j - centre_j|.
[[nodiscard]] LinearProgram leastDeviation(const solver::Program& program, const Eigen::VectorXd& weight);

}  // namespace tarebowl::reference
