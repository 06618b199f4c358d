// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The same questions to a file and to a server that a copy of it was moved to, side by side:
// TAREBOWL_BENCH_FILE and TAREBOWL_BENCH_SERVER name them, such as the ten years that bench_feeding makes.
// Each is asked over a connection that stays open, as the window's does, and of another group each time:
// nothing is answered from memory.
#include "core/store/animal_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/group_reading.h"
#include "core/store/reading.h"
#include "core/transfer/health_period.h"
#include "core/transfer/intake_period.h"
#include "core/transfer/intake_trend.h"
#include "core/transfer/kitchen_day.h"
#include "core/transfer/zoo_intake.h"
#include "tests/bench/bench_files.h"

#include <benchmark/benchmark.h>

#include <cstdlib>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace tarebowl::bench {
namespace {

using quantity::Date;
using store::Collection;

/// What the questions are about.
struct Asked {
  std::string group{};
  std::string section{};
  Date last{};  ///< something was fed on it, and on the years before
};
using Question = std::function<void(const Collection&, const Asked&)>;

Date before(Date day, int days) {
  return std::chrono::sys_days(day) - std::chrono::days(days);
}

void intakeOver(const Collection& collection, const Asked& asked, int days) {
  benchmark::DoNotOptimize(
      transfer::readIntake(collection, asked.group, before(asked.last, days - 1), asked.last));
}

void trendOver(const Collection& collection, const Asked& asked, int days) {
  benchmark::DoNotOptimize(transfer::readTrend(
      collection, {.group = asked.group, .from = before(asked.last, days - 1), .to = asked.last}));
}

void zoosMonth(const Collection& collection, const Asked& asked) {
  const std::vector<food::NutrientId> nutrients{food::nutrients::energy(), food::nutrients::protein(),
                                                food::nutrients::calcium(), food::nutrients::phosphorus()};
  benchmark::DoNotOptimize(
      transfer::readZooIntake(collection, before(asked.last, 29), asked.last, nutrients));
}

const std::vector<std::pair<const char*, Question>>& questions() {
  static const std::vector<std::pair<const char*, Question>> all{
      {"group",
       [](const Collection& from, const Asked& asked) {
         benchmark::DoNotOptimize(store::knowGroup(from, asked.group, asked.last));
       }},
      {"sheet",
       [](const Collection& from, const Asked& asked) {
         benchmark::DoNotOptimize(transfer::readPrepSheet(from, asked.section, asked.last));
       }},
      {"health_90_days",
       [](const Collection& from, const Asked& asked) {
         benchmark::DoNotOptimize(
             transfer::readHealth(from, {.group = asked.group}, before(asked.last, 89), asked.last));
       }},
      {"intake_28_days", [](const Collection& from, const Asked& asked) { intakeOver(from, asked, 28); }},
      {"intake_a_year", [](const Collection& from, const Asked& asked) { intakeOver(from, asked, 365); }},
      {"trend_28_days", [](const Collection& from, const Asked& asked) { trendOver(from, asked, 28); }},
      {"trend_ten_years", [](const Collection& from, const Asked& asked) { trendOver(from, asked, 3652); }},
      {"zoos_month", &zoosMonth},
  };
  return all;
}

/// The last day on which a group was fed.
Date lastFed(const Collection& collection, const std::string& group) {
  using std::chrono::January;
  using std::chrono::year;
  constexpr Date kFirst{year(1950), January, std::chrono::day(1)};
  constexpr Date kLast{year(2200), January, std::chrono::day(1)};
  return store::fedSpan(collection, group, kFirst, kLast).value().last;
}

/// The connection has been open for a while: what comes again is ready by then.
constexpr int kAskedBefore = 3;

void ask(benchmark::State& state, const std::string& place, const Question& question) {
  const Collection collection =
      Collection::open(place, kBench.at, {.access = store::OpenOptions::Access::ReadOnly});
  const auto groups = store::listGroups(collection);
  const Date last = lastFed(collection, groups.front().record.code);
  int next = 0;
  const auto askNext = [&] {
    const auto& group = groups[static_cast<std::size_t>(++next) % groups.size()].record;
    const Asked asked{group.code, group.section, before(last, next % 100)};
    store::readTogether(collection, [&](const Collection& whole) {
      question(whole, asked);
      return true;
    });
  };
  while (next < kAskedBefore) askNext();
  for (auto step : state) askNext();
}

void addQuestionsTo(const char* engine, const char* variable) {
  const char* const place = std::getenv(variable);
  if (place == nullptr) return;
  for (const auto& [name, question] : questions())
    benchmark::RegisterBenchmark((std::string(name) + '/' + engine).c_str(),
                                 [place = std::string(place), question = question](benchmark::State& state) {
                                   ask(state, place, question);
                                 })
        ->Unit(benchmark::kMillisecond)
        ->UseRealTime();
}

}  // namespace
}  // namespace tarebowl::bench

int main(int count, char** words) {
  tarebowl::bench::addQuestionsTo("file", "TAREBOWL_BENCH_FILE");
  tarebowl::bench::addQuestionsTo("server", "TAREBOWL_BENCH_SERVER");
  benchmark::Initialize(&count, words);
  benchmark::RunSpecifiedBenchmarks();
}
