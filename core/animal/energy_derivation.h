// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/energy_need.h"
#include "core/animal/target.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::animal {

/// One thing that multiplies the energy: maintenance, life stage, activity, season, the aim for body
/// condition. low == high where the source gives one number.
struct EnergyFactor {
  enum class Kind { Maintenance, LifeStage, Activity, Season, ConditionAim, House };
  Kind kind = Kind::Maintenance;
  std::string words{};  ///< "maintenance", "lactation", "winter", "lose a half point"
  double low = 1.0;     ///< above 0, at most high
  double high = 1.0;
  std::optional<EnergyLevel> of{};  ///< what its source multiplies; missing: not said
  TargetOrigin origin{};
  bool operator==(const EnergyFactor&) const = default;
};

/// How the energy need of an animal or a group is worked out: every number is a choice that can be edited.
struct EnergyPlan {
  std::string group{};  ///< of Allometry: "placental mammals"
  EnergyLevel level = EnergyLevel::Resting;
  double coefficient = 70.0;  ///< kcal per day at 1 kg; above 0
  double exponent = 0.75;     ///< above 0, at most 1.5
  std::string validity{};
  std::optional<quantity::Kilograms> lightest{};  ///< of the animals that the source speaks of
  std::optional<quantity::Kilograms> heaviest{};
  bool followsTemperature = false;  ///< reptiles and others: no feeding rate for a cool animal
  TargetOrigin origin{};
  std::vector<EnergyFactor> factors{};
  bool operator==(const EnergyPlan&) const = default;
};

/// A published choice as the beginning of a plan, its numbers turned into kcal and kg.
[[nodiscard]] EnergyPlan planFrom(const Allometry& allometry);
/// A published multiplier as a factor of a plan.
[[nodiscard]] EnergyFactor factorFrom(const EnergyMultiplier& multiplier, EnergyFactor::Kind kind);

enum class EnergyCaution {
  NotAFeedingRate,  ///< reptiles and others whose need follows temperature
  FreeLivingLevel,  ///< no animal in human care spends as much
  OutsideValidity,  ///< the source sets limits that this animal is outside of
  SourceFromMemory,
  FactorsDoubleCount  ///< two of one kind (House aside), or one on top of more than what its source
                      ///< multiplies
};

/// A line of the derivation that a person can check by hand: the line above to the power of `by`
/// (MetabolicMass), or times `by` (Level, Factor, Group). BodyMass begins, PerAnimal repeats the result,
/// Headcount is the number of animals.
struct EnergyStep {
  enum class Kind { BodyMass, MetabolicMass, Level, Factor, PerAnimal, Headcount, Group };
  Kind kind = Kind::BodyMass;
  std::string words{};  ///< of a factor
  double by = 1.0;      ///< exponent, coefficient, factor (its low) or number of animals
  double byHigh = 1.0;
  double low = 0.0;  ///< kg, kg^exponent, animals or kcal per day, as the kind says
  double high = 0.0;
  TargetOrigin origin{};
};

struct EnergyDerivation {
  std::vector<EnergyStep> steps{};
  quantity::Kilocalories low{};  ///< per animal and day
  quantity::Kilocalories high{};
  std::vector<EnergyCaution> cautions{};
};

/// Where what a plan comes to is from: the sources of its level and its factors, and the least certain way in
/// which any of them is known. A published constant times a factor of the house is no published number.
[[nodiscard]] TargetOrigin originOf(const EnergyPlan& plan);

/// Throws std::domain_error when the mass is not above 0 and finite, the plan is outside its ranges or the
/// headcount below 1.
[[nodiscard]] EnergyDerivation deriveEnergy(const EnergyPlan& plan, quantity::Kilograms bodyMass,
                                            std::optional<int> headcount = std::nullopt);

}  // namespace tarebowl::animal
