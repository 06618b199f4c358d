// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation.h"
#include "tests/bench/over_instances.h"
#include "tests/reference/ifct_rotations.h"
#include "tests/reference/reference_data.h"
#ifdef TAREBOWL_OTHER_SOLVERS
#include "tests/reference/other_solvers.h"
#include "tests/reference/rotation_reading.h"
#endif

#include <chrono>
#include <ctime>
#include <string>

// Days of 30 foods: six lists of four foods, of each of which two are fed a day (twelve choices a day), no
// listed food more than two days running, six foods beside, 30 targets over the period and half as wide again
// on each day; the cheapest. A line for each seed: how long until there is a plan, until one is proven to be
// within 1 % of what no plan betters, and what gap is left where the search ended before that. Then GLPK and
// CBC on the same mixed-integer program, day by day, to the same gap. Processor time of the thread that asks;
// a second one works beside it, both_ms is what they take together.

namespace tarebowl::bench {
namespace {

constexpr std::uint64_t kWeeks = 10;
constexpr std::uint64_t kLongPeriods = 3;
constexpr double kGap = 0.01;
constexpr std::chrono::seconds kDeadline{5};  // the bar
constexpr double kPeerSeconds = 20.0;

struct Period {
  int days = 7;
  std::uint64_t seed = 1;
};

diet::RotationOptions toOnePercent() {
  diet::RotationOptions options;
  options.deadline = kDeadline;
  options.nodes = 5'000'000;
  options.rounds = 400;
  options.enoughGap = kGap;
  return options;
}

#ifdef TAREBOWL_OTHER_SOLVERS
/// Seconds to the gap; those until it gave up where it did not come there.
template <class Solve>
void timeOther(benchmark::State& state, const std::string& name, const Solve& solve) {
  const double start = threadSeconds();
  const bool isThere = solve().has_value();
  state.counters[name + "_ms"] = (threadSeconds() - start) * 1e3;
  state.counters[name + "_there"] = isThere ? 1.0 : 0.0;
}

void timeOthers(benchmark::State& state, const diet::RotationProblem& problem, double gap) {
  const reference::LinearProgram same = reference::readRotation(problem, reference::Asked::Cheapest);
  timeOther(state, "glpk", [&] { return reference::Glpk(same).solveWhole(kPeerSeconds, gap); });
  timeOther(state, "cbc", [&] { return reference::solveWholeByCbc(same, kPeerSeconds, gap); });
}
#endif

void planned(benchmark::State& state, const Period& period, bool besideOthers) {
  const auto table = reference::ifctFile();
  if (!table) return state.SkipWithError(reference::ifctMissingNote().c_str());
  const diet::RotationProblem problem =
      reference::randomRotation(reference::readIfctFoods(*table), {.seed = period.seed, .days = period.days});
  for ([[maybe_unused]] auto _ : state) {
    const double start = threadSeconds();
    const std::clock_t both = std::clock();
    const diet::RotationPlan plan = diet::rotate(problem, toOnePercent());
    state.SetIterationTime(threadSeconds() - start);
    state.counters["both_ms"] = static_cast<double>(std::clock() - both) * 1e3 / CLOCKS_PER_SEC;
    if (plan.days.empty()) return state.SkipWithError("no plan");
    state.counters["first_ms"] = static_cast<double>(plan.firstPlan.count()) / 1e3;
    state.counters["gap_pct"] = 100.0 * plan.objective.gap();
    state.counters["short"] = plan.period.value + plan.daily.value;
#ifdef TAREBOWL_OTHER_SOLVERS
    if (besideOthers) timeOthers(state, problem, std::max(kGap, plan.objective.gap()));
#else
    static_cast<void>(besideOthers);
#endif
  }
}

void add(const Period& period, bool besideOthers) {
  const std::string name =
      "rotation_to_one_percent/" + std::to_string(period.days) + "x30x30/seed:" + std::to_string(period.seed);
  benchmark::RegisterBenchmark(name.c_str(),
                               [=](benchmark::State& state) { planned(state, period, besideOthers); })
      ->UseManualTime()
      ->Iterations(1)
      ->Unit(benchmark::kMillisecond);
}

}  // namespace
}  // namespace tarebowl::bench

int main(int argc, char** argv) {
  using namespace tarebowl::bench;
  for (std::uint64_t seed = 1; seed <= kWeeks; ++seed) add({7, seed}, true);
  for (const int days : {14, 28})
    for (std::uint64_t seed = 1; seed <= kLongPeriods; ++seed) add({days, seed}, false);
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
}
