// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_pattern.h"

#include <vector>

namespace tarebowl::diet {

/// Structure rules and frequencies that a plan breaks. What is over cannot be helped and breaks none.
struct BrokenRules {
  /// By how much: foods of a day too few or too many, days of a food too few or too many, days in runs that
  /// are too long.
  int by = 0;
  std::vector<char> foods;  ///< whether a rule that is broken speaks of the food
};
[[nodiscard]] BrokenRules brokenRules(const RotationModel& model, const FedPattern& pattern);
[[nodiscard]] bool keepsRules(const RotationModel& model, const FedPattern& pattern);

}  // namespace tarebowl::diet
