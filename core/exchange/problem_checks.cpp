// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/problem_checks.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace tarebowl::exchange {

namespace {

using diet::BalanceProblem;
using diet::DietFood;
using food::NutrientId;
using quantity::Basis;

std::vector<JsonReader> entriesOf(const JsonReader& root, std::string_view key) {
  const auto list = root.find(key);
  return list ? list->elements() : std::vector<JsonReader>{};
}

bool knows(const BalanceProblem& problem, const DietFood& food, NutrientId nutrient) {
  if (nutrient != food::nutrients::energy()) return food.composition.find(nutrient) != nullptr;
  return food::estimateEnergy(problem.energyMethod, food.composition).per100g.has_value();
}

bool anyFoodKnows(const BalanceProblem& problem, NutrientId nutrient) {
  return std::any_of(problem.foods.begin(), problem.foods.end(),
                     [&](const DietFood& food) { return knows(problem, food, nutrient); });
}

/// Without one known value the target could never be judged, and a silent "met" would be a lie.
void requireKnown(const BalanceProblem& problem, NutrientId nutrient, const JsonReader& reader) {
  if (anyFoodKnows(problem, nutrient)) return;
  const std::string how = nutrient == food::nutrients::energy()
                              ? fmt::format(" (by the method {})", food::symbolOf(problem.energyMethod))
                              : std::string();
  reader.complain(fmt::format("a nutrient that at least one food knows{}, found {}", how,
                              food::describe(nutrient).tagname));
}

void requireBasisKnown(const BalanceProblem& problem, Basis basis, const JsonReader& reader) {
  if (basis == Basis::DryMatter && !anyFoodKnows(problem, food::nutrients::water())) {
    reader.refuse("a basis that the foods allow: none of them states WATER");
  }
  if (basis == Basis::Energy && !anyFoodKnows(problem, food::nutrients::energy())) {
    reader.refuse(fmt::format("a basis that the foods allow: {} gives no food's energy",
                              food::symbolOf(problem.energyMethod)));
  }
}

bool countsEnergy(const BalanceProblem& problem) {
  const NutrientId energy = food::nutrients::energy();
  const auto byEnergy = [](const auto& rule) { return rule.basis == Basis::Energy; };
  return std::any_of(problem.targets.begin(), problem.targets.end(),
                     [&](const auto& target) { return target.nutrient == energy || byEnergy(target); }) ||
         std::any_of(problem.ratios.begin(), problem.ratios.end(),
                     [&](const auto& ratio) { return ratio.of == energy || ratio.to == energy; }) ||
         std::any_of(problem.shares.begin(), problem.shares.end(), byEnergy) ||
         problem.objective.nutrient == energy;
}

void checkFoods(const BalanceProblem& problem, const JsonReader& root) {
  const auto entries = root.member("foods").elements();
  std::set<std::string_view> ids;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const DietFood& food = problem.foods[i];
    if (!ids.insert(food.id).second) entries[i].member("id").refuse("an id that no other food has");
    const food::EnergyEstimate estimate = food::estimateEnergy(problem.energyMethod, food.composition);
    if (!estimate.implausibleCarbohydrate) continue;
    entries[i]
        .member("per_100_g")
        .complain(fmt::format("proximates that leave carbohydrate or NFE of at least {:g} g in 100 g for the "
                              "method {}, found less",
                              food::kLowestCredibleCarbohydrate, food::symbolOf(problem.energyMethod)));
  }
}

void checkIds(const BalanceProblem& problem, const JsonReader& root) {
  std::set<std::string_view> ids;
  const auto check = [&](const auto& rules, std::string_view key) {
    const auto entries = entriesOf(root, key);
    for (std::size_t i = 0; i < entries.size(); ++i) {
      if (ids.insert(rules[i].id).second) continue;
      entries[i].member("id").refuse("an id that no other target, ratio or share has");
    }
  };
  check(problem.targets, "targets");
  check(problem.ratios, "ratios");
  check(problem.shares, "shares");
}

void checkTargets(const BalanceProblem& problem, const JsonReader& root) {
  const auto entries = entriesOf(root, "targets");
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const animal::Target& target = problem.targets[i];
    requireKnown(problem, target.nutrient, entries[i].member("nutrient"));
    requireBasisKnown(problem, target.basis, entries[i].member("basis"));
    const bool needsMass = target.basis == Basis::BodyMass || target.basis == Basis::MetabolicMass;
    if (!needsMass || problem.eater.bodyMass) continue;
    const std::string expected = fmt::format("a number above 0, because target {} has the basis {}",
                                             inQuotes(target.id), quantity::symbolOf(target.basis));
    if (const auto animal = root.find("animal")) animal->refuseMissing("body_mass_kg", expected);
    root.refuseMissing("animal", "body_mass_kg: " + expected);
  }
}

void checkRatios(const BalanceProblem& problem, const JsonReader& root) {
  const auto entries = entriesOf(root, "ratios");
  for (std::size_t i = 0; i < entries.size(); ++i) {
    requireKnown(problem, problem.ratios[i].of, entries[i].member("of"));
    requireKnown(problem, problem.ratios[i].to, entries[i].member("to"));
  }
}

int foodsInGroup(const BalanceProblem& problem, const std::string& group) {
  return static_cast<int>(std::count_if(problem.foods.begin(), problem.foods.end(),
                                        [&](const DietFood& food) { return food.group == group; }));
}

void checkGroups(const BalanceProblem& problem, const JsonReader& root) {
  constexpr std::string_view kExpected = "a group that at least one food has";
  const auto shares = entriesOf(root, "shares");
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (foodsInGroup(problem, problem.shares[i].group) == 0)
      shares[i].member("group").refuse(std::string(kExpected));
    requireBasisKnown(problem, problem.shares[i].basis, shares[i].member("basis"));
  }
  const auto choices = entriesOf(root, "choices");
  for (std::size_t i = 0; i < choices.size(); ++i) {
    const int count = foodsInGroup(problem, problem.choices[i].group);
    if (count == 0) choices[i].member("group").refuse(std::string(kExpected));
    if (problem.choices[i].atLeast > count) {
      choices[i]
          .member("at_least")
          .refuse(fmt::format("at most {}, the number of foods in group {}", count,
                              inQuotes(problem.choices[i].group)));
    }
  }
}

void checkObjective(const BalanceProblem& problem, const JsonReader& root) {
  using Kind = diet::Objective::Kind;
  const auto objective = root.find("objective");
  if (!objective) return;
  if (problem.objective.nutrient)
    requireKnown(problem, *problem.objective.nutrient, objective->member("nutrient"));
  if (problem.objective.kind != Kind::LowestCost) return;
  const auto foods = root.member("foods").elements();
  for (std::size_t i = 0; i < foods.size(); ++i) {
    if (problem.foods[i].costPerKg) continue;
    foods[i].refuseMissing("cost_per_kg", "a number of 0 or more, because the objective is lowest-cost");
  }
}

}  // namespace

void checkProblem(const BalanceProblem& problem, const JsonReader& root) {
  if (!root.find("energy_method") && countsEnergy(problem)) {
    root.refuseMissing("energy_method", "a method, because a target, share or the objective counts energy");
  }
  checkFoods(problem, root);
  checkIds(problem, root);
  checkTargets(problem, root);
  checkRatios(problem, root);
  checkGroups(problem, root);
  checkObjective(problem, root);
}

}  // namespace tarebowl::exchange
