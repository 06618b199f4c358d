// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/house_rule.h"
#include "core/animal/target_profile.h"
#include "core/diet/problem.h"
#include "core/quantity/date.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::diet {

/// Why something is offered. The diet is everything offered, whatever its purpose (Feeding Program Guidelines
/// for AZA Institutions, 2001).
enum class Purpose { Bowl, Treat, TrainingReward, Enrichment, Browse };
/// "bowl", "treat", "training-reward", "enrichment", "browse".
[[nodiscard]] std::string_view symbolOf(Purpose purpose);

/// A food of a diet: so much of it per animal and day, as fed.
struct DietLine {
  std::string food{};  ///< food::Food::code
  quantity::Grams amount{};
  quantity::Grams min{};
  std::optional<quantity::Grams> max{};
  bool locked = false;  ///< the solver must not move it
  Purpose purpose = Purpose::Bowl;
  std::string meal{};         ///< "morning"; empty: whenever
  std::string preparation{};  ///< what the kitchen does with it
  bool operator==(const DietLine&) const = default;
};

/// Something that is given in an amount that nobody weighs: between low and high, per animal and day. The
/// balance carries the middle, and the range as uncertainty.
struct Allowance {
  std::string food{};
  quantity::Grams low{};
  quantity::Grams high{};
  Purpose purpose = Purpose::Treat;
  std::string note{};
  bool operator==(const Allowance&) const = default;
};

/// A bound that this diet sets otherwise than its profile does, and why.
struct ChangedBound {
  std::string rule{};  ///< id of a target, ratio or share of the profile
  std::optional<double> min{};
  std::optional<double> max{};
  std::string reason{};
  bool operator==(const ChangedBound&) const = default;
};

/// Draft: being worked on. Submitted: waits for a decision, not edited meanwhile. Approved: fed; never
/// changes. Retired: no longer fed, kept for the record.
enum class VersionState { Draft, Submitted, Approved, Retired };
/// "draft", "submitted", "approved", "retired".
[[nodiscard]] std::string_view symbolOf(VersionState state);

/// A step in the life of a version.
struct VersionStep {
  VersionState to = VersionState::Draft;
  std::string who{};
  std::string at{};  ///< ISO 8601 UTC
  std::string reason{};
  bool operator==(const VersionStep&) const = default;
};

/// Draft → submitted → approved → retired; submitted → draft (sent back). Nothing else.
[[nodiscard]] bool mayGo(VersionState from, VersionState to);

/// A diet of a group by its name; what is in it stands in its versions.
struct NamedDiet {
  std::string code{};   ///< "tenrec-evening"; unique in a collection
  std::string name{};   ///< "Lesser hedgehog tenrecs, evening bowl"
  std::string group{};  ///< animal::Group::code
  std::string note{};
  bool invented = false;
  bool operator==(const NamedDiet&) const = default;
};

/// All that one version of a diet says. Numbers are per animal and day, as fed.
struct DietVersion {
  int number = 1;
  VersionState state = VersionState::Draft;
  std::optional<int> madeFrom{};       ///< the version that it was begun from
  animal::ProfileReference profile{};  ///< the targets that it is judged by, in the version it was made with
  std::vector<DietLine> lines{};       ///< no food twice in one meal
  std::vector<Allowance> allowances{};
  std::vector<ChangedBound> changedBounds{};
  std::vector<animal::ShareRule> shares{};    ///< beside those of the profile
  std::vector<animal::ChoiceRule> choices{};  ///< beside those of the profile
  Objective objective{};
  std::optional<double> confidence{};
  food::EnergyMethod energyMethod = food::EnergyMethod::ModifiedAtwater;
  bool wholeSteps = true;
  std::vector<LiftedBan> lifted{};          ///< cautions and exclusions that this diet sets aside
  std::optional<quantity::Date> fedFrom{};  ///< its first day, once it is approved
  int phaseInDays = 0;  ///< over so many days from the version that was fed before (phase_in.h); 0: at once
  std::string note{};
  std::vector<VersionStep> steps{};  ///< the oldest first
  bool operator==(const DietVersion&) const = default;
};

/// What is wrong with a version as it is written, before anything is worked out.
enum class VersionProblem { NoFood, AmountNegative, MinAboveMax, FoodTwiceInAMeal, AllowanceTurnedRound };

struct VersionFinding {
  VersionProblem problem = VersionProblem::NoFood;
  std::string food{};  ///< the food it concerns
  bool operator==(const VersionFinding&) const = default;
};

/// In the order of the lines, then of the allowances; empty where nothing is wrong.
[[nodiscard]] std::vector<VersionFinding> problemsWith(const DietVersion& version);

}  // namespace tarebowl::diet
