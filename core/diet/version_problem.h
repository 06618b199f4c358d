// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/diet/from_profile.h"

#include <cstddef>
#include <map>
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

/// What a version is judged by and made from: a snapshot of the collection.
struct VersionContext {
  std::string title{};  ///< of the problem: "Lesser hedgehog tenrecs, evening bowl, version 2"
  bool invented = false;
  animal::ResolvedProfile profile{};
  EaterFacts facts{};
  std::map<std::string, DietFood> foods{};           ///< by food::Food::code
  std::vector<animal::FoodCaution> houseCautions{};  ///< beside those that come with the program
};

struct ProblemOfVersion {
  BalanceProblem problem{};              ///< its reference is what the version gives, where it gives anything
  Diet amounts{};                        ///< what the version gives
  std::vector<PlaceInVersion> places{};  ///< one per food of the problem
  std::vector<bool> locked{};            ///< one per food
  /// Every target, ratio and share of the profile as the profile bounds it, whatever the version changes.
  std::vector<ChangedBound> profileBounds{};
  std::size_t profileChoices = 0;  ///< so many of the problem's choices come first and are the profile's
  std::vector<RuleNotCounted> notCounted{};
  std::vector<std::string> missingFoods{};  ///< codes that the version names and nobody knows
  /// Rules that the version bounds and the profile does not state.
  std::vector<std::string> boundsOfNoRule{};
  /// Hard rules that the version would loosen without saying why: the profile's bounds stay in force.
  std::vector<std::string> boundsWithoutReason{};
};

/// Of a bound that a diet sets itself: it no longer has the source of the rule that it stands in.
[[nodiscard]] animal::TargetOrigin ownBoundOrigin(const std::string& reason);

/// Whether these bounds let something pass that a hard rule of the profile does not. A safe upper limit is
/// hard until it is lifted with a reason, in a diet as in a profile.
[[nodiscard]] bool loosensHardRule(const ProblemOfVersion& opened, const std::string& rule,
                                   std::optional<double> min, std::optional<double> max);

/// The balance problem of a version: the rules of the profile with the version's own bounds, shares and
/// choices, on its foods and allowances. Lines of foods that nobody knows are left out and named.
[[nodiscard]] ProblemOfVersion versionProblem(const DietVersion& version, const VersionContext& context);

/// The version that a problem on the desk has become: its grams, limits and locks, and bounds that differ
/// from those of the profile. What no problem holds (number, state, steps, notes) stays as in `before`, and
/// so do lines of foods that are missing. grams, locked, places: one per food of the problem.
[[nodiscard]] DietVersion versionOf(const BalanceProblem& problem, const Diet& grams,
                                    const std::vector<bool>& locked,
                                    const std::vector<PlaceInVersion>& places, const ProblemOfVersion& opened,
                                    const DietVersion& before);

}  // namespace tarebowl::diet
