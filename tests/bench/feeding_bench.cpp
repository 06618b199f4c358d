// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Ten years of a zoo's feeding: 300 groups of 10 foods each, about 11 million lines, generated with a seed.
// TAREBOWL_FEEDING_DAYS and TAREBOWL_FEEDING_GROUPS make it smaller. Beside each reading, the sqlite3 shell
// sums the same rows, where it is installed.
#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/transfer/intake_trend.h"
#include "core/transfer/zoo_intake.h"
#include "tests/bench/bench_files.h"
#include "tests/bench/fed_zoo.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <random>
#include <vector>

namespace tarebowl::bench {
namespace {

using quantity::Grams;

/// What the Intake room shows of a group: calcium as eaten and all beside it.
void groupsTenYears(benchmark::State& state) {
  const auto collection = store::Collection::open(fedZoo(), kBench.at);
  const transfer::TrendAsked asked{
      .group = groupCode(groups() / 2), .from = dayAt(0), .to = dayAt(days() - 1)};
  std::size_t known = 0;
  for (auto step : state) {
    const auto trend = transfer::readTrend(collection, asked).value();
    known = 0;
    for (const intake::IntakeStretch& point : trend.points) known += point.daysKnown;
  }
  state.counters["days_known"] = static_cast<double>(known);
  state.counters["bytes_a_line"] = megabytes(fedZoo()) * 1e6 / lines();
}

/// Only what is eaten of each food.
void groupsTenYearsOfBowls(benchmark::State& state) {
  const auto collection = store::Collection::open(fedZoo(), kBench.at);
  for (auto step : state) {
    transfer::IntakeReader reader(collection, groupCode(groups() / 2), "house 0");
    for (int day = 0; day < days(); day += 182)
      benchmark::DoNotOptimize(reader.read(dayAt(day), dayAt(std::min(days() - 1, day + 181))));
  }
}

void groupsTenYearsOfLines(benchmark::State& state) {
  const auto collection = store::Collection::open(fedZoo(), kBench.at);
  double sum = 0.0;
  for (auto step : state)
    store::CountedBowlReader(collection)
        .read(groupCode(groups() / 2), dayAt(0), dayAt(days() - 1), [&](const intake::CountedBowl& bowl) {
          for (const intake::CountedItem& item : bowl.items) sum += item.planned.value();
        });
  benchmark::DoNotOptimize(sum);
}

/// Energy, protein, calcium and phosphorus as eaten by every group.
void zoosMonth(benchmark::State& state) {
  const auto collection = store::Collection::open(fedZoo(), kBench.at);
  const std::vector<food::NutrientId> nutrients{food::nutrients::energy(), food::nutrients::protein(),
                                                food::nutrients::calcium(), food::nutrients::phosphorus()};
  for (auto step : state)
    benchmark::DoNotOptimize(
        transfer::readZooIntake(collection, dayAt(days() - 30), dayAt(days() - 1), nutrients));
}

std::string shell(const std::string& where) {
  return fmt::format(
      "sqlite3 -readonly {} \"SELECT food, SUM(weighed_mg - COALESCE(left_mg, 0)) FROM feeding_line WHERE {} "
      "GROUP BY food\" > /dev/null",
      fedZoo().string(), where);
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
                        storedDay(days() - 30), storedDay(days() - 1)));
  if (!runs("command -v sqlite3 > /dev/null")) return state.SkipWithError("sqlite3 is not installed");
  for (auto step : state) runs(command);
}

/// A section's sheet of thirty bowls put on the disk, and then all of its weights.
void writeSheet(benchmark::State& state) {
  store::Collection collection = unfedZoo(workFile("sheet.tarebowl"));
  std::mt19937 random(20260101);
  int day = storedDay(0);
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

BENCHMARK(groupsTenYearsOfLines)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(groupsTenYearsOfBowls)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(groupsTenYears)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(shellSumsGroup)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(zoosMonth)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(shellSumsMonth)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(writeSheet)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace tarebowl::bench

BENCHMARK_MAIN();
