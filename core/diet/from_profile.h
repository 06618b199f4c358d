// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"
#include "core/diet/problem.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// What a problem must know of who eats, beside the profile.
struct EaterFacts {
  Eater eater{};
  std::optional<quantity::Kilocalories> energyLow{};  ///< per animal and day (animal::deriveEnergy)
  std::optional<quantity::Kilocalories> energyHigh{};
  animal::TargetOrigin energyOrigin{};
  bool energyFollowsTemperature = false;  ///< then it is no feeding rate, and no target
};

/// Why a rule of the profile is not in the problem: it could not be judged there.
enum class NotCounted {
  NoFoodKnowsNutrient,
  NoFoodOfGroup,
  BodyMassUnknown,
  EnergyIsNoFeedingRate,  ///< of an animal without body heat of its own: the profile must state a target
  DryMatterUnknown  ///< of what its "as fed" presumes: stated of a dry feed, it would mean little of a wet
                    ///< one
};

/// Common practice, no source.
inline constexpr double kEnergyTolerance = 0.05;

struct RuleNotCounted {
  std::string id{};
  NotCounted why = NotCounted::NoFoodKnowsNutrient;
  bool operator==(const RuleNotCounted&) const = default;
};

struct ProblemOfProfile {
  BalanceProblem problem{};
  std::vector<RuleNotCounted> notCounted{};
};

/// The rules of a profile, with all that it takes over, on foods for an eater. Targets stated as fed are put
/// on dry matter by what the profile presumes of its feed, energy by body mass is put on the day. A target
/// whose max alone is hard (a safe upper limit not lifted) becomes two: its min under its own id, its max
/// under upperLimitId(id). The energy need is the hard target "energy" unless the profile states one; a need
/// that is a single number is met within kEnergyTolerance, since bowls are weighed in steps. Rules that
/// nothing in the bowl can be judged by are left out and named.
[[nodiscard]] ProblemOfProfile profileProblem(
    const animal::ResolvedProfile& profile, const EaterFacts& facts, std::vector<DietFood> foods,
    food::EnergyMethod method = food::EnergyMethod::ModifiedAtwater);

[[nodiscard]] std::string upperLimitId(const std::string& targetId);

}  // namespace tarebowl::diet
