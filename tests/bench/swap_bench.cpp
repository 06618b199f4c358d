// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A food is missing from a bowl, and every food of SR28 (8,789) is a candidate: the time until the first rows
// and until the ranking is complete; the same while the other lines may move by a tenth, with pairs, and with
// the reading of the foods from a collection. Without the table (TAREBOWL_REFERENCE_DIR) it is skipped.
#include "core/diet/measure.h"
#include "core/diet/swap.h"
#include "core/diet/swap_effect.h"
#include "core/transfer/swap_on_desk.h"
#include "core/transfer/table_import.h"
#include "tests/bench/bench_files.h"
#include "tests/reference/imported_tables.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <optional>
#include <string_view>

namespace tarebowl::bench {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::array<std::string_view, 20> kTargets{"PROCNT", "FAT",  "FIBTG", "CA",  "P",      "MG", "K",
                                                    "NA",     "FE",   "ZN",    "CU",  "MN",     "SE", "VITC",
                                                    "VITE",   "THIA", "RIBF",  "NIA", "VITB6A", "FOL"};
constexpr std::array<std::pair<std::string_view, double>, 9> kBowl{{{"Kale, raw", 60},
                                                                    {"Endive, raw", 50},
                                                                    {"Broccoli, raw", 40},
                                                                    {"Beans, snap, green, raw", 40},
                                                                    {"Carrots, raw", 30},
                                                                    {"Beets, raw", 25},
                                                                    {"Egg, whole, cooked, hard-boiled", 10},
                                                                    {"Celery, raw", 20},
                                                                    {"Turnip greens, raw", 15}}};

std::vector<diet::DietFood> publishedFoods() {
  const auto table = reference::sr28Table();
  if (!table) return {};
  exchange::MemorySink sink;
  (void)exchange::importTable(table->input, table->mapping, sink);
  std::vector<diet::DietFood> foods;
  for (food::CheckedFood& food : reference::checkedFoods(sink)) {
    diet::DietFood& candidate = foods.emplace_back();
    candidate.id = "sr28-" + std::to_string(foods.size());
    candidate.name = food.name;
    candidate.form = food.form;
    candidate.group = food.group;
    candidate.composition = std::move(food.composition);
  }
  return foods;
}

/// Zones of a quarter about what the bowl holds per kg dry matter, and its energy as a hard rule.
void addTargets(diet::BalanceProblem& problem, const diet::Diet& bowl) {
  const auto add = [&](std::string_view tagname, quantity::Basis basis, double width, bool hard) {
    const food::NutrientId nutrient = food::findByTagname(tagname).value();
    problem.targets.push_back({.id = std::string(tagname),
                               .nutrient = nutrient,
                               .min = 0.0,
                               .max = std::nullopt,
                               .unit = food::describe(nutrient).unit,
                               .basis = basis,
                               .hard = hard,
                               .origin = {}});
    problem.reference = bowl;
    const diet::TargetBalance line = diet::balance(problem, bowl).targets.back();
    problem.targets.back().min = (1.0 - width) * *line.value;
    problem.targets.back().max = (1.0 + width) * *line.value;
  };
  add("ENERC", quantity::Basis::Day, 0.05, true);
  for (const std::string_view tagname : kTargets) add(tagname, quantity::Basis::DryMatter, 0.25, false);
  problem.ratios.push_back({.id = "ca-p",
                            .of = food::nutrients::calcium(),
                            .to = food::nutrients::phosphorus(),
                            .min = 1.2,
                            .max = 2.2,
                            .origin = {}});
}

/// Nothing where the table is not there.
std::optional<diet::SwapRequest> request() {
  static const std::optional<diet::SwapRequest> kRequest = []() -> std::optional<diet::SwapRequest> {
    diet::SwapRequest made;
    made.candidates = publishedFoods();
    made.problem.eater.taxa = {"lemur"};
    for (const auto& [name, grams] : kBowl) {
      const auto found = std::ranges::find(made.candidates, name, &diet::DietFood::name);
      if (found == made.candidates.end()) return std::nullopt;
      made.problem.foods.push_back(*found);
      made.approved.emplace_back(grams);
    }
    addTargets(made.problem, made.approved);
    made.missing = {0};
    std::erase_if(made.candidates, [&](const auto& food) { return food.id == made.problem.foods[0].id; });
    return made;
  }();
  return kRequest;
}

void rank(benchmark::State& state) {
  auto asked = request();
  if (!asked) return state.SkipWithError("SR28 is not here");
  asked->move = static_cast<double>(state.range(1)) / 100.0;
  diet::SwapOptions options;
  options.threads = static_cast<int>(state.range(0));
  options.pairs = state.range(2) != 0 ? diet::SwapOptions::Pairs::Always : diet::SwapOptions::Pairs::Never;
  double firstRows = 0.0;
  diet::SwapRanking ranking;
  for ([[maybe_unused]] auto step : state) {
    const Clock::time_point start = Clock::now();
    bool isFirst = true;
    options.soFar = [&](const diet::SwapRanking&) {
      if (isFirst) firstRows = std::chrono::duration<double, std::milli>(Clock::now() - start).count();
      isFirst = false;
    };
    ranking = diet::rankSwaps(*asked, options);
  }
  state.counters["candidates"] = static_cast<double>(asked->candidates.size());
  state.counters["first_ms"] = firstRows;
  state.counters["swaps"] = static_cast<double>(ranking.singles.size());
  state.counters["pairs"] = static_cast<double>(ranking.pairs.size());
  state.counters["refused"] = static_cast<double>(ranking.refused.size());
  if (!ranking.singles.empty()) state.SetLabel(asked->candidates[ranking.singles[0].parts[0].candidate].name);
}
BENCHMARK(rank)
    ->ArgNames({"threads", "move", "pairs"})
    ->Args({1, 0, 0})
    ->Args({2, 0, 0})
    ->Args({2, 10, 0})
    ->Args({2, 0, 1})
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

/// SR28 in a collection; made once.
std::optional<std::filesystem::path> collectionOfFoods() {
  const auto table = reference::sr28Table();
  if (!table) return std::nullopt;
  std::filesystem::path file = workFile("swap.tarebowl");
  if (std::filesystem::exists(file)) return file;
  const std::filesystem::path making = workFile("swap-making.tarebowl");
  {
    store::Collection collection = newCollection(making);
    (void)transfer::importTable(collection, {table->input, table->mapping, "SR28.csv"}, kBench,
                                transfer::Keep::WhereItMay);
  }
  std::filesystem::rename(making, file);
  return file;
}

/// All that is on hand, as a problem of twenty targets counts it.
void read(benchmark::State& state) {
  const auto asked = request();
  const auto file = collectionOfFoods();
  if (!asked || !file) return state.SkipWithError("SR28 is not here");
  const store::Collection collection = store::Collection::open(*file, kBench.at);
  std::size_t foods = 0;
  for ([[maybe_unused]] auto step : state) foods = transfer::foodsOnHand(collection, asked->problem).size();
  state.counters["foods"] = static_cast<double>(foods);
}
BENCHMARK(read)->Unit(benchmark::kMillisecond)->UseRealTime();

/// From the question to the whole ranking, as the Kitchen does it: read, then rank.
void readAndRank(benchmark::State& state) {
  auto asked = request();
  const auto file = collectionOfFoods();
  if (!asked || !file) return state.SkipWithError("SR28 is not here");
  const store::Collection collection = store::Collection::open(*file, kBench.at);
  diet::SwapOptions options;
  options.pairs = diet::SwapOptions::Pairs::Never;
  for ([[maybe_unused]] auto step : state) {
    asked->candidates = transfer::foodsOnHand(collection, asked->problem);
    benchmark::DoNotOptimize(diet::rankSwaps(*asked, options));
  }
  state.counters["candidates"] = static_cast<double>(asked->candidates.size());
}
BENCHMARK(readAndRank)->Unit(benchmark::kMillisecond)->UseRealTime();

/// What stands nearest: the missing food's own group, read and ranked, which is offered while the rest is
/// read.
void firstOffers(benchmark::State& state) {
  auto asked = request();
  const auto file = collectionOfFoods();
  if (!asked || !file) return state.SkipWithError("SR28 is not here");
  const store::Collection collection = store::Collection::open(*file, kBench.at);
  const transfer::OnHand ownGroup{.groups = {asked->problem.foods[asked->missing.front()].group}};
  for ([[maybe_unused]] auto step : state) {
    asked->candidates = transfer::foodsOnHand(collection, asked->problem, ownGroup);
    benchmark::DoNotOptimize(diet::rankSwaps(*asked));
  }
  state.counters["candidates"] = static_cast<double>(asked->candidates.size());
}
BENCHMARK(firstOffers)->Unit(benchmark::kMillisecond)->UseRealTime();

/// What a person is told of one row.
void effect(benchmark::State& state) {
  const auto asked = request();
  if (!asked) return state.SkipWithError("SR28 is not here");
  diet::SwapOptions options;
  options.pairs = diet::SwapOptions::Pairs::Never;
  const diet::SwapRanking ranking = diet::rankSwaps(*asked, options);
  if (ranking.singles.empty()) return state.SkipWithError("nothing will do");
  for ([[maybe_unused]] auto step : state)
    benchmark::DoNotOptimize(diet::effectOf(*asked, ranking.singles.front()));
}
BENCHMARK(effect)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace tarebowl::bench

BENCHMARK_MAIN();
