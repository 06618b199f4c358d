// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/diet/bowls.h"

#include <stdexcept>

namespace tarebowl::diet::testing {

food::NutrientId nutrient(std::string_view tagname) {
  const auto found = food::findByTagname(tagname);
  if (!found) throw std::invalid_argument(std::string(tagname));
  return *found;
}

DietFood makeFood(std::string id, std::string group, std::initializer_list<Value> values) {
  DietFood food;
  food.id = food.name = std::move(id);
  food.group = std::move(group);
  food.invented = true;
  for (const Value& value : values) {
    food::NutrientValue stated;
    stated.amount = quantity::AsFedContent(value.per100g);
    if (value.sd) stated.sd = quantity::AsFedContent(*value.sd);
    stated.source = food.id + " sample";
    food.composition.set(nutrient(value.tagname), stated);
  }
  return food;
}

animal::Target target(std::string_view tagname, Zone zone, quantity::Unit unit, quantity::Basis basis) {
  return {.id = std::string(tagname),
          .nutrient = nutrient(tagname),
          .min = zone.min,
          .max = zone.max,
          .unit = unit,
          .basis = basis,
          .origin = {}};
}

animal::RatioTarget ratio(std::string_view of, std::string_view to, Zone zone) {
  return {.id = std::string(of) + ":" + std::string(to),
          .of = nutrient(of),
          .to = nutrient(to),
          .min = zone.min,
          .max = zone.max,
          .origin = {}};
}

ShareRule share(std::string group, Zone zone, quantity::Basis basis) {
  ShareRule rule;
  rule.id = rule.group = std::move(group);
  rule.min = zone.min;
  rule.max = zone.max;
  rule.basis = basis;
  return rule;
}

Diet grams(std::initializer_list<double> values) {
  Diet diet;
  for (const double value : values) diet.emplace_back(value);
  return diet;
}

BalanceProblem greensAndInsects() {
  BalanceProblem problem;
  problem.invented = true;
  problem.energyMethod = food::EnergyMethod::Given;
  problem.foods = {
      makeFood("greens", "leafy vegetable", {{"WATER", 90}, {"CA", 200}, {"P", 50}, {"ENERC", 40}}),
      makeFood("insects", "insect", {{"WATER", 60}, {"CA", 40}, {"P", 300}, {"ENERC", 200}})};
  problem.reference = grams({200, 0});
  return problem;
}

Diet usualBowl() {
  return grams({100, 50});
}

}  // namespace tarebowl::diet::testing
