// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/remedies.h"

#include <benchmark/benchmark.h>

#include <array>
#include <random>
#include <string>
#include <string_view>

// A larder of nine thousand invented foods beside a diet that cannot balance: the time to the first five
// remedies, pricing and real solves included.

namespace tarebowl::diet {
namespace {

constexpr std::array<std::string_view, 24> kNutrients{
    "WATER", "PROCNT", "FAT", "ASH", "FIBTG", "CA",   "P",    "MG",   "K",    "NA",  "FE",     "ZN",
    "CU",    "MN",     "SE",  "ID",  "VITC",  "VITE", "VITD", "THIA", "RIBF", "NIA", "VITB6A", "FOL"};
constexpr std::size_t kFirstMineral = 5;

food::NutrientId id(std::string_view tagname) {
  return *food::findByTagname(tagname);
}

DietFood inventedFood(std::mt19937& random, const std::string& name) {
  std::uniform_real_distribution<double> uniform(0.0, 1.0);
  std::lognormal_distribution<double> content(0.0, 1.0);
  DietFood food;
  food.id = food.name = name;
  food.group = "group " + std::to_string(random() % 12);
  const auto set = [&](std::string_view tagname, double amount) {
    food.composition.set(id(tagname), {.amount = quantity::AsFedContent(amount)});
  };
  const double water = 10.0 + 80.0 * uniform(random);
  const double dry = 100.0 - water;
  set("WATER", water);
  set("PROCNT", 0.3 * dry * uniform(random));
  set("FAT", 0.2 * dry * uniform(random));
  set("ASH", 0.1 * dry * uniform(random));
  set("FIBTG", 0.1 * dry * uniform(random));
  for (std::size_t k = kFirstMineral; k < kNutrients.size(); ++k) {
    if (uniform(random) < 0.9) set(kNutrients[k], 0.05 * dry * content(random));
  }
  return food;
}

/// Bands about what equal grams hold, two of them out of reach.
BalanceProblem inventedProblem(std::mt19937& random, int foods) {
  BalanceProblem problem;
  for (int j = 0; j < foods; ++j) {
    problem.foods.push_back(inventedFood(random, "food " + std::to_string(j)));
    problem.foods.back().max = quantity::Grams(60);
  }
  animal::Target energy{.id = "energy",
                        .nutrient = id("ENERC"),
                        .min = 190,
                        .max = 230,
                        .unit = quantity::Unit::Kilocalorie,
                        .basis = quantity::Basis::Day,
                        .origin = {}};
  energy.hard = true;
  problem.targets.push_back(energy);
  for (std::size_t k = 1; k < kNutrients.size(); ++k) {
    double mean = 0.0;
    double dry = 0.0;
    for (const DietFood& food : problem.foods) {
      mean += food.composition.amountPer100g(id(kNutrients[k])).value_or(0.0);
      dry += 100.0 - *food.composition.amountPer100g(id("WATER"));
    }
    const double perKg = 1000.0 * mean / dry;
    const double wanted = k == kFirstMineral || k == kFirstMineral + 6 ? 6.0 : 1.0;
    animal::Target target{.id = std::string(kNutrients[k]),
                          .nutrient = id(kNutrients[k]),
                          .min = 0.7 * wanted * perKg,
                          .max = 1.5 * wanted * perKg,
                          .unit = food::describe(id(kNutrients[k])).unit,
                          .basis = quantity::Basis::DryMatter,
                          .origin = {}};
    problem.targets.push_back(target);
  }
  return problem;
}

void firstFiveRemedies(benchmark::State& state) {
  std::mt19937 random(7);
  BalanceProblem problem = inventedProblem(random, static_cast<int>(state.range(0)));
  problem.wholeSteps = state.range(1) != 0;
  std::vector<DietFood> larder;
  for (int j = 0; j < 9000; ++j) larder.push_back(inventedFood(random, "larder " + std::to_string(j)));
  const DietSolution solution = solve(problem);
  std::size_t found = 0;
  for ([[maybe_unused]] auto _ : state) {
    const std::vector<Remedy> remedies = findRemedies(problem, solution, larder);
    found = remedies.size();
    benchmark::DoNotOptimize(found);
  }
  state.counters["found"] = static_cast<double>(found);
  state.counters["shortfall"] = solution.shortfall;
}
BENCHMARK(firstFiveRemedies)
    ->ArgNames({"foods", "whole"})
    ->Args({12, 0})
    ->Args({12, 1})
    ->Args({25, 0})
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tarebowl::diet

BENCHMARK_MAIN();
