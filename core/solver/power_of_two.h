// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <cmath>

namespace tarebowl::solver {

/// What numbers are divided by to come near 1 without a rounding; 1 where there is nothing to go by.
[[nodiscard]] inline double powerOfTwoNear(double value) {
  return value > 0 && value < kInfinity ? std::exp2(std::round(std::log2(value))) : 1.0;
}

}  // namespace tarebowl::solver
