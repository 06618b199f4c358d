// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/diet/from_profile.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// What a food of the problem is in its version: a line that is weighed in, or an allowance.
struct PlaceInVersion {
  std::string food{};  ///< food::Food::code; the problem's id may carry meal or purpose beside it
  Purpose purpose = Purpose::Bowl;
  std::string meal{};
  std::optional<Allowance> allowance{};
  bool operator==(const PlaceInVersion&) const = default;
};

/// A food by its code; nothing where the collection has none.
using FoodSource = std::function<std::optional<DietFood>(const std::string& code)>;

struct ProblemOfVersion {
  BalanceProblem problem{};              ///< its reference is what the version gives
  std::vector<PlaceInVersion> places{};  ///< one per food of the problem
  std::vector<bool> locked{};            ///< one per food
  std::vector<RuleNotCounted> notCounted{};
  std::vector<std::string> missingFoods{};    ///< codes that the version names and nobody knows
  std::vector<std::string> boundsOfNoRule{};  ///< changed bounds of rules that the profile no longer states
  std::vector<ChangedBound> bounds{};         ///< of every rule as the profile has it, before the version's
};

/// The balance problem of a version: the rules of the profile with the version's own bounds, shares and
/// choices, on its foods and allowances. Lines of foods that nobody knows are left out and named.
[[nodiscard]] ProblemOfVersion versionProblem(const DietVersion& version,
                                              const animal::ResolvedProfile& profile, const EaterFacts& facts,
                                              const FoodSource& foodOf);

/// The version that a problem on the desk has become: its grams, limits and locks, and bounds that differ
/// from those of the profile. What no problem holds (number, state, steps, notes) stays as in `before`, and
/// so do lines of foods that are missing. grams, locked, places: one per food of the problem.
[[nodiscard]] DietVersion versionOf(const BalanceProblem& problem, const Diet& grams,
                                    const std::vector<bool>& locked,
                                    const std::vector<PlaceInVersion>& places, const ProblemOfVersion& opened,
                                    const DietVersion& before);

}  // namespace tarebowl::diet
