// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation.h"

#include <cstddef>
#include <vector>

namespace tarebowl::diet {

/// Cells that a hand has laid down, in the order in which it did.
using LockedCells = std::vector<LockedCell>;

/// It was fed: nothing of it can be planned any more.
[[nodiscard]] bool isOver(const RotationRules& rules, int day);
[[nodiscard]] bool isLocked(const RotationProblem& problem, int day, std::size_t food);

/// The locks of a problem whose days are these, once a food has gone from one day to another, or to a number
/// of grams, or once a cell is locked as it is or free again. What is over stays: then they are as they were.
[[nodiscard]] LockedCells locksWithFoodMoved(const RotationProblem& problem, const std::vector<Diet>& days,
                                             std::size_t food, int from, int to);
[[nodiscard]] LockedCells locksWithGrams(const RotationProblem& problem, std::size_t food, int day,
                                         quantity::Grams grams);
[[nodiscard]] LockedCells locksWithCellTurned(const RotationProblem& problem, const std::vector<Diet>& days,
                                              std::size_t food, int day);

}  // namespace tarebowl::diet
