// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A collection that has grown: opening it to the first readable page, and finding a food as its name is
// typed. The foods are made up, 9,000 of them; the file grows by their samples, 60 values each.
#include "core/food/food_index.h"
#include "core/store/food_import.h"
#include "core/store/food_reading.h"
#include "tests/bench/bench_files.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <array>
#include <vector>

namespace tarebowl::bench {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kFoods = 9'000;
constexpr std::size_t kValuesOfSample = 60;

std::string nameOf(std::size_t food) {
  constexpr std::array<const char*, 9> kWhat{"kale",   "chicory", "cricket", "mealworm", "sweet potato",
                                             "turnip", "rabbit",  "herring", "apple"};
  constexpr std::array<const char*, 7> kHow{"whole",  "leaves",    "young", "dark",
                                            "breast", "with skin", "tops"};
  constexpr std::array<const char*, 5> kForm{"raw", "steamed", "boiled", "dried", "frozen-thawed"};
  return fmt::format("Invented {}, {}, {} {}", kWhat[food % 9], kHow[food / 9 % 7], kForm[food / 63 % 5],
                     food);
}

store::ImportedFood foodNumber(std::size_t food, std::size_t round) {
  store::ImportedFood made{
      .food = {.code = fmt::format("f{:05}", food), .name = nameOf(food), .group = "made"}};
  made.sample.sourceCode = fmt::format("{}-{}", food, round);
  return made;
}

/// Of so many megabytes or more, or of one food; made once.
fs::path collectionOf(double size) {
  const fs::path file = workFile(fmt::format("grown-{:.0f}.tarebowl", size));
  if (fs::exists(file)) return file;
  const fs::path growing = workFile("growing.tarebowl");
  {
    store::Collection collection = newCollection(growing);
    for (std::size_t round = 0; round == 0 || megabytes(growing) < size; ++round) {
      store::FoodImport import(collection, {.name = "made"}, kBench);
      for (std::size_t f = 0; f < (size > 0.0 ? kFoods : 1); ++f) {
        const store::SampleId sample = import.sample(foodNumber(f, round));
        for (std::size_t n = 0; n < kValuesOfSample; ++n)
          (void)import.add(sample,
                           {.component = import.component(food::NutrientId(n)),
                            .amount = quantity::AsFedContent(0.01 * static_cast<double>(f % 97 + n))});
      }
      import.commit();
    }
  }
  fs::rename(growing, file);
  return file;
}

/// What stands between a double click and the first food on the screen: the file open, the list of foods, the
/// food that is shown first with all its samples.
void openToFirstPage(benchmark::State& state) {
  const fs::path file = collectionOf(static_cast<double>(state.range(0)));
  for (auto step : state) {
    const store::Collection collection = store::Collection::open(file, kBench.at);
    const auto foods = store::listFoods(collection);
    benchmark::DoNotOptimize(store::knowFood(collection, store::FoodId(foods.front().id)));
  }
  state.counters["MB"] = megabytes(file);
}

void openOnly(benchmark::State& state) {
  const fs::path file = collectionOf(static_cast<double>(state.range(0)));
  for (auto step : state) benchmark::DoNotOptimize(store::Collection::open(file, kBench.at).schemaVersion());
  state.counters["MB"] = megabytes(file);
}

/// One keystroke: the search for what has been typed so far.
void search(benchmark::State& state, const std::string& typed) {
  std::vector<food::FoodLine> lines;
  for (std::size_t f = 0; f < kFoods; ++f)
    lines.push_back({static_cast<std::int64_t>(f), fmt::format("f{:05}", f), nameOf(f), "raw", "made"});
  const food::FoodIndex index(std::move(lines));
  for (auto step : state) benchmark::DoNotOptimize(index.find(typed, 100));
  state.counters["foods"] = static_cast<double>(index.size());
}

// In megabytes: a collection of one food, one of 9,000 foods with a sample each, and one that has grown.
BENCHMARK(openOnly)->Arg(0)->Arg(1)->Arg(200)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(openToFirstPage)->Arg(0)->Arg(1)->Arg(200)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK_CAPTURE(search, k, std::string("k"))->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(search, kale, std::string("kale"))->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(search, three_words, std::string("raw kale bre"))->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(search, all, std::string())->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tarebowl::bench

BENCHMARK_MAIN();
