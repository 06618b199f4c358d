// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/caution.h"
#include "core/animal/house_rule.h"
#include "core/animal/target.h"
#include "core/food/composition.h"
#include "core/food/energy.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// Grams of each food as fed, per animal and day, in the order of BalanceProblem::foods.
using Diet = std::vector<quantity::Grams>;

struct Eater {
  std::string name;
  int count = 1;
  std::optional<quantity::Kilograms> bodyMass;  ///< per animal; needed by targets per body mass
  /// As in animal::Species::taxa. Where they are known, foods that such an animal must never have are not
  /// given (food_safety.h); where not, cautions are only told.
  std::vector<std::string> taxa{};
  bool operator==(const Eater&) const = default;
};

/// A food as it stands in a diet: what it is, and how much of it may be given per animal and day.
struct DietFood {
  std::string id;
  std::string name;
  std::string form;         ///< "raw", "steamed", "live" …
  std::string preparation;  ///< what the kitchen does with it: "1 cm cubes, steamed 8 min"
  std::string group;        ///< "leafy vegetable" … what shares and choices speak of
  food::Composition composition;
  quantity::Grams min{0};
  std::optional<quantity::Grams> max;
  quantity::Grams scaleStep{1};  ///< what the scale can show; a whole egg is a step of its own mass
  std::optional<double> costPerKg;
  double eatenFraction =
      1.0;  ///< 0 … 1: limits, cost and steps hold on what is offered, targets on what is eaten
  bool invented = false;                ///< a made-up product of the sample collection
  std::vector<std::string> cautions{};  ///< ids of cautions that the house put on it
  bool operator==(const DietFood&) const = default;
};

using animal::ChoiceRule;
using animal::ShareRule;

/// A caution or an exclusion that is set aside, and why. Without a reason it stays in force.
struct LiftedBan {
  std::string ban;     ///< id of the caution or exclusion
  std::string food{};  ///< for this food alone; empty: for all
  std::string reason{};
  std::string who{};
  std::string on{};  ///< ISO day
  bool operator==(const LiftedBan&) const = default;
};

/// What is sought among the diets with the least shortfall.
struct Objective {
  enum class Kind {
    Closest,
    LowestCost,
    Lowest,
    Highest,
    FewestFoods  ///< and closest among those
  };
  Kind kind = Kind::Closest;
  std::optional<food::NutrientId> nutrient;  ///< for Lowest and Highest
  bool operator==(const Objective&) const = default;
};

/// The balance problem: a plain snapshot, complete in itself; its meaning is the documented problem format.
struct BalanceProblem {
  std::string title;
  std::string notes;
  bool invented = false;  ///< part of the invented sample: every view says so
  Eater eater;
  food::EnergyMethod energyMethod = food::EnergyMethod::ModifiedAtwater;
  std::vector<DietFood> foods;
  std::vector<animal::Target> targets;
  std::vector<animal::RatioTarget> ratios;
  std::vector<ShareRule> shares;
  std::vector<ChoiceRule> choices;
  std::vector<animal::Exclusion> exclusions;  ///< always hard
  std::vector<animal::FoodCaution> cautions;  ///< of the house, beside animal::knownCautions()
  std::vector<LiftedBan> lifted;
  std::optional<Diet> reference;  ///< the diet as it is now
  Objective objective;
  std::optional<double> confidence;  ///< 0.5 < p < 1: targets hold with at least this chance
  bool wholeSteps = true;
  bool operator==(const BalanceProblem&) const = default;
};

}  // namespace tarebowl::diet
