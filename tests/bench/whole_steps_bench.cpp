// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"
#include "tests/bench/over_instances.h"
#ifdef TAREBOWL_OTHER_SOLVERS
#include "tests/reference/other_solvers.h"
#endif

#include <chrono>
#include <optional>

// Diets in whole grams over seeded instances of real foods: how many are proved within a second, how long
// that takes (median and 95th percentile, on the clock and in processor time of both threads), how wide the
// gap of the rest is, and what a node costs. The linear kinds beside GLPK and CBC on the same mixed-integer
// program.

namespace tarebowl::bench {
namespace {

using reference::ProgramKind;
using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds kSecond{1000};
constexpr std::chrono::milliseconds kGlance{20};
constexpr double kPeerSeconds = 20.0;

double processSeconds() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

double quantile(std::vector<double> values, double share) {
  if (values.empty()) return 0.0;
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1, static_cast<std::size_t>(share * double(values.size())))];
}

struct Tally {
  std::vector<double> wall, processor, gaps;
  double proved = 0.0;
  double nodes = 0.0;

  void add(const solver::Program& program, int threads) {
    solver::Limits limits;
    limits.deadline = kSecond;
    limits.threads = threads;
    const auto start = Clock::now();
    const double before = processSeconds();
    const solver::Solution solution = solver::solve(program, limits);
    processor.push_back(processSeconds() - before);
    wall.push_back(std::chrono::duration<double>(Clock::now() - start).count());
    const bool answered = solution.status == solver::Status::Optimal;
    proved += answered && solution.gap <= 0.0 ? 1.0 : 0.0;
    gaps.push_back(answered ? solution.gap : solver::kInfinity);
    nodes += static_cast<double>(solution.nodes);
  }

  void report(benchmark::State& state) const {
    const auto count = static_cast<double>(wall.size());
    double total = 0.0;
    for (const double each : processor) total += each;
    state.SetIterationTime(quantile(wall, 0.5));
    state.counters["p95_ms"] = quantile(wall, 0.95) * 1e3;
    state.counters["worst_ms"] = quantile(wall, 1.0) * 1e3;
    state.counters["cpu_ms"] = quantile(processor, 0.5) * 1e3;
    state.counters["cpu_p95_ms"] = quantile(processor, 0.95) * 1e3;
    state.counters["proved_pct"] = 100.0 * proved / count;
    state.counters["worst_gap_pct"] = 100.0 * quantile(gaps, 1.0);
    state.counters["nodes"] = nodes / count;
    state.counters["us_per_node"] = nodes > 0 ? 1e6 * total / nodes : 0.0;
  }
};

std::vector<solver::Program> programsOf(const ProgramKind& kind, std::uint64_t count) {
  std::vector<solver::Program> programs;
  for (std::uint64_t seed = 1; seed <= count; ++seed) {
    auto program = reference::ifctProgram(kind, seed);
    if (program) programs.push_back(std::move(*program));
  }
  return programs;
}

void wholeGrams(benchmark::State& state, const ProgramKind& kind, std::uint64_t count, int threads) {
  const std::vector<solver::Program> programs = programsOf(kind, count);
  if (programs.empty()) return state.SkipWithError(reference::ifctMissingNote().c_str());
  for ([[maybe_unused]] auto _ : state) {
    Tally tally;
    for (const solver::Program& program : programs) tally.add(program, threads);
    tally.report(state);
  }
}

/// The least of these that a search needs to have an answer; nothing where none is enough.
std::optional<std::chrono::milliseconds> needed(const solver::Program& program) {
  for (const int milliseconds : {1, 2, 5, 10, 20, 50}) {
    solver::Limits limits;
    limits.deadline = std::chrono::milliseconds(milliseconds);
    if (solver::solve(program, limits).status == solver::Status::Optimal) return limits.deadline;
  }
  return std::nullopt;
}

/// The share of instances with an answer at the first glance, and its gap; and the least deadline that has
/// one.
void firstAnswer(benchmark::State& state, const ProgramKind& kind, std::uint64_t count) {
  const std::vector<solver::Program> programs = programsOf(kind, count);
  if (programs.empty()) return state.SkipWithError(reference::ifctMissingNote().c_str());
  for ([[maybe_unused]] auto _ : state) {
    std::vector<double> wall;
    std::vector<double> gaps;
    std::vector<double> first;
    for (const solver::Program& program : programs) {
      solver::Limits limits;
      limits.deadline = kGlance;
      const auto start = Clock::now();
      const solver::Solution solution = solver::solve(program, limits);
      wall.push_back(std::chrono::duration<double>(Clock::now() - start).count());
      if (solution.status == solver::Status::Optimal) gaps.push_back(solution.gap);
      const auto deadline = needed(program);
      first.push_back(deadline ? static_cast<double>(deadline->count()) : solver::kInfinity);
    }
    state.SetIterationTime(quantile(wall, 0.5));
    state.counters["worst_ms"] = quantile(wall, 1.0) * 1e3;
    state.counters["answered_pct"] = 100.0 * double(gaps.size()) / double(programs.size());
    state.counters["median_gap_pct"] = 100.0 * quantile(gaps, 0.5);
    state.counters["first_ms"] = quantile(first, 0.5);
    state.counters["worst_first_ms"] = quantile(first, 1.0);
  }
}

#ifdef TAREBOWL_OTHER_SOLVERS
/// Ours in processor time of one thread; theirs likewise, from the same program.
void besideOthers(benchmark::State& state, const ProgramKind& kind, std::uint64_t count) {
  const std::vector<solver::Program> programs = programsOf(kind, count);
  if (programs.empty()) return state.SkipWithError(reference::ifctMissingNote().c_str());
  for ([[maybe_unused]] auto _ : state) {
    std::vector<double> ours;
    std::vector<double> glpk;
    std::vector<double> cbc;
    double differing = 0.0;
    for (const solver::Program& program : programs) {
      double start = threadSeconds();
      const solver::Solution solution = solver::solve(program, {.threads = 1});
      ours.push_back(threadSeconds() - start);
      const bool asksCost = kind.aim == ProgramKind::Aim::Cheapest;
      const double budget = solution.violation * (1.0 + 1e-6) + 1e-9;
      const reference::LinearProgram same =
          asksCost ? reference::leastCost(program, budget) : reference::leastShortfall(program);
      start = threadSeconds();
      const auto theirs = reference::Glpk(same).solveWhole(kPeerSeconds);
      glpk.push_back(threadSeconds() - start);
      start = threadSeconds();
      static_cast<void>(reference::solveWholeByCbc(same, kPeerSeconds));
      cbc.push_back(threadSeconds() - start);
      const double value = asksCost ? solution.objective : solution.violation;
      if (theirs && std::abs(theirs->value - value) > 1e-6 * (1.0 + std::abs(value))) differing += 1.0;
    }
    const double mine = quantile(ours, 0.5);
    state.SetIterationTime(mine);
    state.counters["glpk_ms"] = quantile(glpk, 0.5) * 1e3;
    state.counters["cbc_ms"] = quantile(cbc, 0.5) * 1e3;
    state.counters["times_faster"] = std::min(quantile(glpk, 0.5), quantile(cbc, 0.5)) / mine;
    state.counters["differing"] = differing;
  }
}
#endif

ProgramKind inGrams(ProgramKind kind, ProgramKind::Targets targets, ProgramKind::Aim aim) {
  kind.step = 1.0;
  kind.targets = targets;
  kind.aim = aim;
  return kind;
}

template <class Run>
void add(const std::string& name, const Run& run) {
  benchmark::RegisterBenchmark(name.c_str(), run)
      ->UseManualTime()
      ->Iterations(1)
      ->Unit(benchmark::kMillisecond);
}

std::string sizeOf(const ProgramKind& kind) {
  std::string size("/");
  size.append(std::to_string(kind.foods)).append("x").append(std::to_string(kind.rows));
  return size;
}

void registerAll() {
  using Aim = ProgramKind::Aim;
  using Targets = ProgramKind::Targets;
  for (const auto& [targets, word] : {std::pair{Targets::Met, "met"}, std::pair{Targets::Unmet, "unmet"}}) {
    for (const ProgramKind& size : {reference::kSmall, reference::kMedium, reference::kForty}) {
      const ProgramKind kind = inGrams(size, targets, Aim::Nearest);
      const std::uint64_t count = size.foods > 25 ? 20 : kInstances;
      for (const int threads : {1, 2}) {
        std::string name("nearest_in_grams_");
        name.append(word).append(sizeOf(size)).append("/threads:").append(std::to_string(threads));
        add(name, [=](benchmark::State& state) { wholeGrams(state, kind, count, threads); });
      }
      if (size.foods > 25)
        add(std::string("first_answer_in_20_ms_").append(word).append(sizeOf(size)),
            [=](benchmark::State& state) { firstAnswer(state, kind, count); });
    }
  }
#ifdef TAREBOWL_OTHER_SOLVERS
  for (const ProgramKind& size : {reference::kSmall, reference::kMedium}) {
    const std::uint64_t count = size.foods > 12 ? 12 : kInstances;
    const ProgramKind shortfall = inGrams(size, Targets::Unmet, Aim::ShortfallOnly);
    const ProgramKind cost = inGrams(size, Targets::Met, Aim::Cheapest);
    add(std::string("least_shortfall_in_grams").append(sizeOf(size)),
        [=](benchmark::State& state) { besideOthers(state, shortfall, count); });
    add(std::string("least_cost_in_grams").append(sizeOf(size)),
        [=](benchmark::State& state) { besideOthers(state, cost, count); });
  }
#endif
}

}  // namespace
}  // namespace tarebowl::bench

int main(int argc, char** argv) {
  tarebowl::bench::registerAll();
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
}
