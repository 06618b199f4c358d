// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/diets/example_diet.h"

#include <algorithm>

namespace tarebowl::ui {
namespace {

using food::NutrientId;

NutrientId tag(const char* name) {
  return food::findByTagname(name).value();
}

diet::DietFood foodOf(const char* id, const char* name, const char* form, const char* group,
                      std::initializer_list<std::pair<const char*, double>> contents) {
  diet::DietFood food;
  food.id = id;
  food.name = name;
  food.form = form;
  food.group = group;
  for (const auto& [nutrient, amount] : contents)
    food.composition.set(tag(nutrient),
                         {quantity::AsFedContent(amount), {}, {}, food::Qualifier::Equal, "invented"});
  return food;
}

animal::Target target(const char* id, const char* nutrient, std::optional<double> min,
                      std::optional<double> max, quantity::Unit unit, quantity::Basis basis) {
  return {id, tag(nutrient), min, max, unit, basis, false, 1.0, {}};
}

}  // namespace

diet::BalanceProblem exampleProblem() {
  using quantity::Basis;
  using quantity::Unit;
  diet::BalanceProblem problem;
  problem.title = "Example";
  problem.invented = true;
  problem.eater = {"Examples", 3, quantity::Kilograms(0.14)};
  problem.energyMethod = food::EnergyMethod::Given;
  problem.foods = {foodOf("leaves", "Leaves, raw", "raw", "leafy vegetable",
                          {{"WATER", 90}, {"CA", 100}, {"P", 50}, {"ENERC", 20}, {"VITE", 2}}),
                   foodOf("insects", "Insects (invented)", "live", "insect",
                          {{"WATER", 70}, {"CA", 30}, {"P", 300}, {"ENERC", 120}}),
                   foodOf("limestone", "Limestone powder", "powder", "mineral",
                          {{"WATER", 0}, {"CA", 40'000}, {"P", 0}, {"ENERC", 0}, {"VITE", 0}, {"VITD", 0}})};
  problem.foods[kLimestone].scaleStep = quantity::Grams(0.1);
  problem.foods[kLimestone].max = quantity::Grams(1);
  problem.targets = {target("ca", "CA", 10, {}, Unit::Gram, Basis::DryMatter),
                     target("p", "P", 5, 9, Unit::Gram, Basis::DryMatter),
                     target("energy", "ENERC", 15, 17, Unit::Kilocalorie, Basis::Day),
                     target("vite", "VITE", 20, {}, Unit::Milligram, Basis::DryMatter),
                     target("vitd", "VITD", 1, {}, Unit::Microgram, Basis::DryMatter)};
  problem.targets[kEnergy].hard = true;
  problem.targets[kCalcium].origin = {"A recalled table", animal::Provenance::FromMemory, "domestic dog"};
  problem.ratios = {{"ca-p", tag("CA"), tag("P"), 1.0, {}, false, 1.0, {}}};
  problem.shares = {{"insects", "insect", {}, 0.7, Basis::DryMatter, false, 1.0, {}}};
  problem.reference = diet::Diet{quantity::Grams(20), quantity::Grams(10), quantity::Grams(0)};
  return problem;
}

diet::DietSolution exampleSolve(const diet::BalanceProblem& problem, const diet::SolveOptions& /*options*/) {
  diet::DietSolution solution;
  solution.grams = {quantity::Grams(30), quantity::Grams(8), quantity::Grams(0.3)};
  solution.grams.resize(problem.foods.size());
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    const diet::DietFood& food = problem.foods[j];
    solution.grams[j] = std::max(solution.grams[j], food.min);
    if (food.max) solution.grams[j] = std::min(solution.grams[j], *food.max);
  }
  solution.balance = diet::balance(problem, solution.grams);
  solution.shortfall = solution.balance.shortfall;
  solution.status = solution.shortfall > 0.0 ? diet::DietStatus::Compromise : diet::DietStatus::Balanced;
  return solution;
}

}  // namespace tarebowl::ui
