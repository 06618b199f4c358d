// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/reference/ifct_programs.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <ctime>
#include <functional>
#include <string>
#include <vector>

/// One figure for a kind of program: the median over seeded instances, each timed several times.
namespace tarebowl::bench {

inline constexpr std::uint64_t kInstances = 50;

/// Processor time of this thread, which other programs on the machine do not add to.
inline double threadSeconds() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

/// Seconds of one call: the median of five timings, each of as many calls as last a tenth of a millisecond.
template <class Call>
double secondsOf(const Call& call) {
  const auto timed = [&](int calls) {
    const double start = threadSeconds();
    for (int k = 0; k < calls; ++k) call();
    return threadSeconds() - start;
  };
  const double first = std::max(1e-8, std::min(timed(1), timed(1)));
  if (first > 0.1) return first;
  const int calls = static_cast<int>(std::max(1.0, 1e-4 / first));
  std::vector<double> timings;
  for (int k = 0; k < 5; ++k) timings.push_back(timed(calls) / calls);
  std::nth_element(timings.begin(), timings.begin() + 2, timings.end());
  return timings[2];
}

/// What is timed on one instance, in seconds; may add to the counters.
using Timed = std::function<double(benchmark::State&, const solver::Program&)>;

/// Iterations' time is the median over the instances; the worst of them is a counter, in microseconds.
inline void overInstances(benchmark::State& state, const reference::ProgramKind& kind, const Timed& timed) {
  std::vector<solver::Program> programs;
  for (std::uint64_t seed = 1; seed <= kInstances; ++seed) {
    auto program = reference::ifctProgram(kind, seed);
    if (!program) return state.SkipWithError(reference::ifctMissingNote().c_str());
    programs.push_back(std::move(*program));
  }
  for ([[maybe_unused]] auto _ : state) {
    std::vector<double> seconds;
    for (const solver::Program& program : programs) seconds.push_back(timed(state, program));
    std::sort(seconds.begin(), seconds.end());
    state.SetIterationTime(seconds[seconds.size() / 2]);
    state.counters["worst_us"] = seconds.back() * 1e6;
  }
}

/// NAME/foods x rows for each size, one pass over the instances.
inline void registerSizes(const std::string& name, const std::vector<reference::ProgramKind>& kinds,
                          const Timed& timed) {
  for (const reference::ProgramKind& kind : kinds) {
    const std::string size = std::to_string(kind.foods) + "x" + std::to_string(kind.rows);
    benchmark::RegisterBenchmark(
        (name + "/" + size).c_str(),
        [kind, timed](benchmark::State& state) { overInstances(state, kind, timed); })
        ->UseManualTime()
        ->Iterations(1)
        ->Unit(benchmark::kMicrosecond);
  }
}

}  // namespace tarebowl::bench
