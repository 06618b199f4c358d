// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <random>

namespace tarebowl::solver {

/// What kind of random program a test wants.
struct RandomShape {
  Eigen::Index columns = 4;
  Eigen::Index rows = 6;
  double hardShare = 0.2;  ///< chance that a row is hard
  double step = 1.0;       ///< 0: continuous
  double upper = 6.0;
  bool linear = false;
  bool withChoices = false;
  bool withScatter = false;
};

/// A program that looks like a diet: coefficients of either sign near 1, bounds that a mixture of columns
/// nearly meets.
[[nodiscard]] Program randomProgram(std::mt19937& random, const RandomShape& shape);

}  // namespace tarebowl::solver
