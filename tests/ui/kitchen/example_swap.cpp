// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/kitchen/example_swap.h"

#include <initializer_list>
#include <string>
#include <utility>

namespace tarebowl::ui {
namespace {

using quantity::Grams;

food::NutrientId nutrient(const char* tagname) {
  return food::findByTagname(tagname).value();
}

diet::DietFood foodOf(const char* name, const char* group,
                      std::initializer_list<std::pair<const char*, double>> values) {
  diet::DietFood food;
  food.id = food.name = name;
  food.group = group;
  for (const auto& [tagname, amount] : values)
    food.composition.set(nutrient(tagname), {.amount = quantity::AsFedContent(amount)});
  return food;
}

}  // namespace

diet::SwapRequest exampleSwap() {
  diet::SwapRequest request;
  diet::BalanceProblem& problem = request.problem;
  problem.invented = true;
  problem.eater.count = 3;
  problem.energyMethod = food::EnergyMethod::Given;
  problem.foods = {foodOf("Greens", "leafy", {{"WATER", 90}, {"CA", 200}, {"P", 50}, {"ENERC", 40}}),
                   foodOf("Insects", "insect", {{"WATER", 60}, {"CA", 40}, {"P", 300}, {"ENERC", 200}})};
  problem.targets = {{.id = "ca",
                      .nutrient = nutrient("CA"),
                      .min = 200,
                      .max = std::nullopt,
                      .unit = quantity::Unit::Milligram,
                      .basis = quantity::Basis::Day,
                      .origin = {}}};
  problem.ratios = {{.id = "ca-p",
                     .of = food::nutrients::calcium(),
                     .to = food::nutrients::phosphorus(),
                     .min = 1.0,
                     .max = 2.0,
                     .origin = {}}};
  problem.exclusions = {{.id = "no-fruit", .group = "fruit", .reason = "no cultivated fruit"}};
  request.approved = {Grams(100), Grams(50)};
  request.missing = {0};
  request.candidates = {foodOf("Pear", "fruit", {{"WATER", 84}, {"CA", 9}, {"P", 12}, {"ENERC", 57}}),
                        foodOf("Pellet", "pellet", {{"WATER", 10}, {"CA", 1000}, {"P", 500}, {"ENERC", 300}}),
                        foodOf("Kale", "leafy", {{"WATER", 90}, {"CA", 200}, {"P", 50}, {"ENERC", 40}})};
  return request;
}

}  // namespace tarebowl::ui
