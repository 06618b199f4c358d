// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/continuous.h"

#include <chrono>
#include <cstdint>

namespace tarebowl::solver {

struct ChoiceAnswer {
  ContinuousAnswer best;
  double gap = 0.0;  ///< relative; 0 when proven
  std::int64_t nodes = 0;
};

/// Continuous amounts with choices: depth first over who is used and who is left out, both stages, each node
/// a continuous solve whose value bounds what lies below it.
[[nodiscard]] ChoiceAnswer searchChoices(const ScaledProgram& program, const Limits& limits,
                                         std::chrono::steady_clock::time_point deadline);

}  // namespace tarebowl::solver
