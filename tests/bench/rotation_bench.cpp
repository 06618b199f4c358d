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

// Seven days of 30 foods: six lists of four foods, of each of which two are fed a day (twelve choices a day),
// no listed food more than two days running, six foods beside, 30 targets over the period and half as wide
// again on each day; the cheapest. How long until there is a plan, and until one is proven to be within 1 %;
// GLPK and CBC on the same mixed-integer program, day by day, to the same gap. Processor time of one thread.

namespace tarebowl::bench {
namespace {

constexpr std::uint64_t kWeeks = 10;
constexpr double kGap = 0.01;
constexpr double kPeerSeconds = 60.0;

std::vector<diet::RotationProblem> weeks(std::uint64_t count) {
  std::vector<diet::RotationProblem> problems;
  const auto table = reference::ifctFile();
  if (!table) return problems;
  const std::vector<diet::DietFood> foods = reference::readIfctFoods(*table);
  for (std::uint64_t seed = 1; seed <= count; ++seed)
    problems.push_back(reference::randomRotation(foods, {.seed = seed}));
  return problems;
}

double middle(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}
double worst(const std::vector<double>& values) {
  return *std::max_element(values.begin(), values.end());
}

diet::RotationOptions within(double gap, int rounds) {
  diet::RotationOptions options;
  options.deadline = std::chrono::hours(1);
  options.nodes = 5'000'000;
  options.rounds = rounds;
  options.enoughGap = gap;
  return options;
}

void firstPlan(benchmark::State& state) {
  const auto problems = weeks(kWeeks);
  if (problems.empty()) return state.SkipWithError(reference::ifctMissingNote().c_str());
  for ([[maybe_unused]] auto _ : state) {
    std::vector<double> seconds;
    double planned = 0.0;
    for (const diet::RotationProblem& problem : problems) {
      const double start = threadSeconds();
      const diet::RotationPlan plan = diet::rotate(problem, within(1.0, 0));
      seconds.push_back(threadSeconds() - start);
      planned += plan.days.empty() ? 0.0 : 1.0;
    }
    state.SetIterationTime(middle(seconds));
    state.counters["worst_ms"] = worst(seconds) * 1e3;
    state.counters["planned_pct"] = 100.0 * planned / static_cast<double>(problems.size());
  }
}

void toOnePercent(benchmark::State& state) {
  const auto problems = weeks(kWeeks);
  if (problems.empty()) return state.SkipWithError(reference::ifctMissingNote().c_str());
  for ([[maybe_unused]] auto _ : state) {
    std::vector<double> seconds;
    std::vector<double> gaps;
    for (const diet::RotationProblem& problem : problems) {
      const double start = threadSeconds();
      const diet::RotationPlan plan = diet::rotate(problem, within(kGap, 400));
      seconds.push_back(threadSeconds() - start);
      gaps.push_back(plan.days.empty() ? 1.0 : plan.objective.gap());
    }
    state.SetIterationTime(middle(seconds));
    state.counters["worst_ms"] = worst(seconds) * 1e3;
    state.counters["median_gap_pct"] = 100.0 * middle(gaps);
    state.counters["worst_gap_pct"] = 100.0 * worst(gaps);
  }
}

#ifdef TAREBOWL_OTHER_SOLVERS
void besideOthers(benchmark::State& state) {
  const auto problems = weeks(3);
  if (problems.empty()) return state.SkipWithError(reference::ifctMissingNote().c_str());
  for ([[maybe_unused]] auto _ : state) {
    std::vector<double> ours, glpk, cbc;
    double glpkThere = 0.0;
    double cbcThere = 0.0;
    for (const diet::RotationProblem& problem : problems) {
      double start = threadSeconds();
      const diet::RotationPlan plan = diet::rotate(problem, within(kGap, 400));
      ours.push_back(threadSeconds() - start);
      const double gap = std::max(kGap, plan.objective.gap());
      const reference::LinearProgram same = reference::readRotation(problem, reference::Asked::Cheapest);
      start = threadSeconds();
      glpkThere += reference::Glpk(same).solveWhole(kPeerSeconds, gap) ? 1.0 : 0.0;
      glpk.push_back(threadSeconds() - start);
      start = threadSeconds();
      cbcThere += reference::solveWholeByCbc(same, kPeerSeconds, gap) ? 1.0 : 0.0;
      cbc.push_back(threadSeconds() - start);
    }
    const auto count = static_cast<double>(problems.size());
    state.SetIterationTime(middle(ours));
    state.counters["glpk_ms"] = middle(glpk) * 1e3;
    state.counters["cbc_ms"] = middle(cbc) * 1e3;
    state.counters["glpk_there_pct"] = 100.0 * glpkThere / count;
    state.counters["cbc_there_pct"] = 100.0 * cbcThere / count;
    state.counters["times_faster"] = std::min(middle(glpk), middle(cbc)) / middle(ours);
  }
}
#endif

void add(const char* name, void (*run)(benchmark::State&)) {
  benchmark::RegisterBenchmark(name, run)->UseManualTime()->Iterations(1)->Unit(benchmark::kMillisecond);
}

}  // namespace
}  // namespace tarebowl::bench

int main(int argc, char** argv) {
  using namespace tarebowl::bench;
  add("rotation_first_plan/7x30x30", firstPlan);
  add("rotation_to_one_percent/7x30x30", toOnePercent);
#ifdef TAREBOWL_OTHER_SOLVERS
  add("rotation_beside_glpk_and_cbc/7x30x30", besideOthers);
#endif
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
}
