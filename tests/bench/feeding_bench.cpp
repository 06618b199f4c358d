// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Ten years of a zoo's feeding: 300 groups of 10 foods each, about 11 million lines, generated with a seed.
// TAREBOWL_FEEDING_DAYS and TAREBOWL_FEEDING_GROUPS make it smaller. Beside each reading, the sqlite3 shell
// sums the same rows, where it is installed.
#include "core/intake/time_of_sheet.h"
#include "core/store/animal_verbs.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/verbs.h"
#include "tests/bench/bench_files.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <random>
#include <vector>

namespace tarebowl::bench {
namespace {

namespace fs = std::filesystem;
using quantity::Grams;

constexpr int kItems = 10;
constexpr int kFoods = 200;
constexpr int kFirstDay = 17'000;  // 2016-07-18

int numberFrom(const char* variable, int otherwise) {
  const char* const told = std::getenv(variable);
  return told != nullptr ? std::atoi(told) : otherwise;
}

int days() {
  constexpr int kTenYears = 3652;
  return numberFrom("TAREBOWL_FEEDING_DAYS", kTenYears);
}

int groups() {
  constexpr int kZoo = 300;
  return numberFrom("TAREBOWL_FEEDING_GROUPS", kZoo);
}

std::string groupCode(int group) {
  return fmt::format("g{:03}", group);
}

std::vector<intake::Bowl> sheetOf(int day, std::mt19937& random) {
  std::vector<intake::Bowl> bowls;
  for (int group = 0; group < groups(); ++group) {
    intake::Bowl bowl{.key = {groupCode(group), intake::dayOfNumber(day), 1},
                      .meal = "morning",
                      .label = groupCode(group) + ", morning",
                      .animals = 1 + group % 9};
    for (int item = 1; item <= kItems; ++item)
      bowl.items.push_back({.item = item,
                            .food = fmt::format("f{}", (group * 7 + item * 3) % kFoods),
                            .planned = Grams(0.5 * static_cast<double>(1 + random() % 400)),
                            .preparation = "chopped"});
    bowls.push_back(std::move(bowl));
  }
  return bowls;
}

/// The sheet, its weights, and what was left of it.
void writeDay(store::Collection& collection, int day, std::mt19937& random) {
  const auto at = [&](int hour) {
    return store::Author{fmt::format("Keeper {}", day % 4),
                         intake::timeFrom(intake::dayOfNumber(day), hour * 3600)};
  };
  const auto bowls = sheetOf(day, random);
  store::openSheet(collection, "made", intake::dayOfNumber(day), bowls, at(6));
  std::vector<store::WeightRead> weights;
  std::vector<store::LeftoverFound> left;
  for (const intake::Bowl& bowl : bowls)
    for (const intake::BowlItem& item : bowl.items) {
      const intake::ItemKey key{bowl.key, item.item};
      weights.push_back({key, item.planned + Grams(0.1 * static_cast<double>(random() % 5))});
      left.push_back({key,
                      intake::LeftoverKind::Weighed,
                      item.planned * (0.01 * static_cast<double>(random() % 60)),
                      {}});
    }
  store::weighIn(collection, weights, at(8));
  store::noteLeftovers(collection, left, at(33));
}

store::Collection made(const fs::path& file) {
  store::Collection collection = newCollection(file);
  store::addSpecies(collection, {.code = "made", .name = "Made up", .invented = true}, kBench);
  for (int group = 0; group < groups(); ++group)
    store::addGroup(
        collection,
        {.code = groupCode(group), .name = groupCode(group), .species = "made", .section = "made"}, kBench);
  for (int food = 0; food < kFoods; ++food)
    store::addFood(collection, {.food = {.code = fmt::format("f{}", food), .name = fmt::format("f{}", food)}},
                   kBench);
  return collection;
}

/// Made once, and kept for the next run.
const fs::path& tenYears() {
  static const fs::path file = [] {
    const fs::path name = workFile(fmt::format("fed-{}-{}.tarebowl", groups(), days()));
    if (fs::exists(name)) return name;
    const fs::path growing = workFile("feeding.tarebowl");
    {
      store::Collection collection = made(growing);
      std::mt19937 random(20260101);
      for (int day = 0; day < days(); ++day) writeDay(collection, kFirstDay + day, random);
    }
    fs::rename(growing, name);
    return name;
  }();
  return file;
}

double lines() {
  return static_cast<double>(groups()) * kItems * days();
}

quantity::Date dayAt(int number) {
  return intake::dayOfNumber(kFirstDay + number);
}

/// What was eaten of each food, before water is counted: the sum that a chart of any nutrient begins with.
double eatenOf(const store::Collection& collection, const std::optional<std::string>& group, int from,
               int to) {
  double eaten = 0.0;
  store::readFedLines(collection, group, dayAt(from), dayAt(to), [&](const store::FedLine& line) {
    if (line.offered) eaten += (*line.offered - line.left.value_or(Grams(0))).value();
  });
  return eaten;
}

void groupsTenYears(benchmark::State& state) {
  const auto collection = store::Collection::open(tenYears(), kBench.at);
  for (auto step : state)
    benchmark::DoNotOptimize(eatenOf(collection, groupCode(groups() / 2), 0, days() - 1));
  state.counters["bytes_a_line"] = megabytes(tenYears()) * 1e6 / lines();
}

void zoosMonth(benchmark::State& state) {
  const auto collection = store::Collection::open(tenYears(), kBench.at);
  for (auto step : state) benchmark::DoNotOptimize(eatenOf(collection, {}, days() - 30, days() - 1));
}

std::string shell(const std::string& where) {
  return fmt::format(
      "sqlite3 -readonly {} \"SELECT food, SUM(weighed_mg - COALESCE(left_mg, 0)) FROM feeding_line WHERE {} "
      "GROUP BY food\" > /dev/null",
      tenYears().string(), where);
}

void shellSumsGroup(benchmark::State& state) {
  const std::string command = shell(
      fmt::format("group_id = (SELECT id FROM animal_group WHERE code = '{}')", groupCode(groups() / 2)));
  if (!runs("command -v sqlite3 > /dev/null")) return state.SkipWithError("sqlite3 is not installed");
  for (auto step : state) runs(command);
}

void shellSumsMonth(benchmark::State& state) {
  const std::string command =
      shell(fmt::format("group_id IN (SELECT id FROM animal_group) AND day BETWEEN {} AND {}",
                        kFirstDay + days() - 30, kFirstDay + days() - 1));
  if (!runs("command -v sqlite3 > /dev/null")) return state.SkipWithError("sqlite3 is not installed");
  for (auto step : state) runs(command);
}

/// A section's sheet of thirty bowls put on the disk, and then all of its weights.
void writeSheet(benchmark::State& state) {
  store::Collection collection = made(workFile("sheet.tarebowl"));
  std::mt19937 random(20260101);
  int day = kFirstDay;
  for (auto step : state) {
    state.PauseTiming();
    auto bowls = sheetOf(++day, random);
    bowls.resize(std::min<std::size_t>(30, bowls.size()));
    std::vector<store::WeightRead> weights;
    for (const intake::Bowl& bowl : bowls)
      for (const intake::BowlItem& item : bowl.items)
        weights.push_back({{bowl.key, item.item}, item.planned});
    state.ResumeTiming();
    store::openSheet(collection, "made", intake::dayOfNumber(day), bowls,
                     {"Keeper", intake::timeFrom(intake::dayOfNumber(day), 3600)});
    if (state.range(0) == 1)
      store::weighIn(collection, weights, {"Keeper", intake::timeFrom(intake::dayOfNumber(day), 7200)});
  }
}

BENCHMARK(groupsTenYears)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(shellSumsGroup)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(zoosMonth)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(shellSumsMonth)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(writeSheet)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace tarebowl::bench

BENCHMARK_MAIN();
