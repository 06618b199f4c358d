// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/caution.h"
#include "core/diet/problem.h"

#include <cstddef>
#include <set>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// A caution or an exclusion that a food of the problem falls under.
struct FoodFinding {
  std::size_t food = 0;  ///< position in the problem's foods
  std::string ban{};     ///< id of the caution or of the exclusion
  animal::CautionSeverity severity = animal::CautionSeverity::Consider;
  std::string reason{};
  std::string advice{};
  animal::TargetOrigin origin{};
  bool inForce = true;   ///< false: the animal is not known, so that the caution is only told
  std::string lifted{};  ///< why it was set aside

  /// Nothing of the food is given: it must never be, or the house excludes it, and no reason lifts that.
  [[nodiscard]] bool forbids() const {
    return severity == animal::CautionSeverity::Never && inForce && lifted.empty();
  }
};

/// What the foods fall under, in their order, the gravest first: exclusions of the problem, cautions of the
/// house, those that come with the program. Cautions are in force where the eater's taxa are known.
[[nodiscard]] std::vector<FoodFinding> findingsOn(const BalanceProblem& problem);

/// The same of one food, be it of the problem or not.
[[nodiscard]] std::vector<FoodFinding> findingsOn(const BalanceProblem& problem, const DietFood& food);

/// The findings that a keeper must see beside a bowl: of foods that are in it, and of those that may not be.
[[nodiscard]] std::vector<FoodFinding> findingsOn(const BalanceProblem& problem, const Diet& diet);

/// Whether anything in the problem can forbid a food. Where not, no food need be looked at.
[[nodiscard]] bool bansAnything(const BalanceProblem& problem);

/// Whether the eater of the problem may not have this food, be it of the problem or of a larder.
[[nodiscard]] bool isBanned(const BalanceProblem& problem, const DietFood& food);

/// The problem with nothing to be had of what may not be given, unless a ban of `released` alone forbids it.
[[nodiscard]] BalanceProblem withoutBanned(const BalanceProblem& problem,
                                           const std::set<std::string>& released = {});

}  // namespace tarebowl::diet
