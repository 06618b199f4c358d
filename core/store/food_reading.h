// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/food/food_index.h"
#include "core/store/collection.h"
#include "core/store/food_records.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// Reading foods. Every call throws StoreError; what a call returns is a snapshot.
namespace tarebowl::store {

/// Every food, without what it is made of: for the list and the index.
[[nodiscard]] std::vector<food::FoodLine> listFoods(const Collection& collection);
[[nodiscard]] std::size_t countFoods(const Collection& collection);

[[nodiscard]] std::optional<StoredFood> findFood(const Collection& collection, FoodId food);
[[nodiscard]] std::optional<StoredFood> findFood(const Collection& collection, const std::string& code);
/// In the order in which they were added.
[[nodiscard]] std::vector<StoredSample> samplesOf(const Collection& collection, FoodId food);

/// A value of something that is no nutrient of this program's list: kept as a table had it, counted by no
/// diet.
struct OtherValue {
  std::string name{};
  std::string unit{};  ///< the symbol of a quantity::Unit
  food::SampleContent amount{};
  std::optional<double> sd{};
  std::optional<int> count{};
  food::Qualifier qualifier = food::Qualifier::Equal;
  std::string source{};
};

/// Of all samples that are not excluded, by name.
[[nodiscard]] std::vector<OtherValue> otherValuesOf(const Collection& collection, FoodId food);

/// What a food is made of and how that came about. Samples of the food itself go first; what they leave open
/// is worked out from the raw food, where it is cooked from one, or from the parts that it is mixed from.
struct KnownFood {
  StoredFood food{};
  std::vector<StoredSample> samples{};
  food::Derivation derivation{};                         ///< indices are those of `samples`
  food::Composition composition{};                       ///< what diets count with, sums of parts too
  std::optional<food::CookingProblem> cookingProblem{};  ///< why nothing was worked out from the raw food
  std::optional<food::RecipeProblem> recipeProblem{};    ///< … or from the parts
};

[[nodiscard]] std::optional<KnownFood> knowFood(const Collection& collection, FoodId food,
                                                const food::DerivationRule& rule = {});

/// A food of the collection as a diet takes it: one piece is a scale step of its own mass.
[[nodiscard]] diet::DietFood asDietFood(const KnownFood& known);
/// The same by its code; nothing where there is no such food.
[[nodiscard]] std::optional<diet::DietFood> dietFood(const Collection& collection, const std::string& code,
                                                     const food::DerivationRule& rule = {});

}  // namespace tarebowl::store
