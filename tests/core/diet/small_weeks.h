// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"

#include <random>

/// Rotations small enough to be looked through by hand or by brute force. All foods are invented.
namespace tarebowl::diet::testing {

/// Leaves a, b and c (each day one of them, 10 or 20 g in steps of 10 g) and a powder (0 or 1 g) without a
/// rule of days. 100 g bring: a 100 mg Ca and 100 mg P, b 200 mg and 100 mg, c 300 mg and 100 mg, powder
/// 10 000 mg Ca. 1 kg costs: a 1, b 2, c 4, powder 10. The cheapest days are sought.
[[nodiscard]] RotationProblem threeLeaves(int days);

/// Rules drawn at random over three leaves and a powder, for two or three days.
[[nodiscard]] RotationProblem drawnWeek(std::mt19937_64& random);

/// What a plan comes to, read literally from the rules' text and not from the program's model.
struct LiteralWeek {
  double period = 0.0;
  double daily = 0.0;
  double wishes = 0.0;
  double objective = 0.0;
};
[[nodiscard]] LiteralWeek readLiterally(const RotationProblem& problem, const std::vector<Diet>& days);

/// The best of all plans on the grid, by going through them. Foods must have limits.
struct BestWeek {
  bool exists = false;
  LiteralWeek value;
  long plans = 0;  ///< that keep the rules
};
[[nodiscard]] BestWeek bestOfAll(const RotationProblem& problem);

}  // namespace tarebowl::diet::testing
