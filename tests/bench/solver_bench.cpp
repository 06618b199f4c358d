// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/solve.h"
#include "tests/core/solver/random_program.h"

#include <benchmark/benchmark.h>

#include <Eigen/Cholesky>
#include <vector>

// One solve beside the floor it is measured against: an Eigen LLT factor-and-solve of as many columns. Twenty
// seeded instances of each size, taken in turn, so that one figure stands for the size and not for one
// instance.

namespace tarebowl::solver {
namespace {

constexpr unsigned kInstances = 20;

std::vector<Program> instances(const RandomShape& shape) {
  std::vector<Program> programs;
  for (unsigned seed = 1; seed <= kInstances; ++seed) {
    std::mt19937 random(seed);
    programs.push_back(randomProgram(random, shape));
  }
  return programs;
}

void solveInTurn(benchmark::State& state, const RandomShape& shape) {
  const std::vector<Program> programs = instances(shape);
  std::size_t at = 0;
  int unproved = 0;
  for ([[maybe_unused]] auto _ : state) {
    const Solution solution = solve(programs[at++ % programs.size()]);
    unproved += solution.gap > 0 || solution.status != Status::Optimal ? 1 : 0;
    benchmark::DoNotOptimize(solution.objective);
  }
  state.counters["unproved"] = unproved;
}

void floorOfTheSize(benchmark::State& state) {
  const Eigen::Index n = state.range(0);
  const Eigen::MatrixXd half = Eigen::MatrixXd::Random(n, n);
  const Eigen::MatrixXd matrix = half * half.transpose() + Eigen::MatrixXd::Identity(n, n);
  const Eigen::VectorXd right = Eigen::VectorXd::Random(n);
  for ([[maybe_unused]] auto _ : state) {
    const Eigen::VectorXd x = matrix.llt().solve(right);
    benchmark::DoNotOptimize(x.data());
  }
}
BENCHMARK(floorOfTheSize)->Arg(12)->Arg(25)->Arg(60)->Arg(80)->Unit(benchmark::kMicrosecond);

void nearestDiet(benchmark::State& state) {
  solveInTurn(
      state,
      {.columns = state.range(0), .rows = state.range(1), .hardShare = 0.0, .step = 0.0, .upper = 20.0});
}
BENCHMARK(nearestDiet)
    ->Args({12, 31})
    ->Args({25, 53})
    ->Args({60, 69})
    ->Args({80, 120})
    ->Unit(benchmark::kMicrosecond);

void cheapestDiet(benchmark::State& state) {
  solveInTurn(state, {.columns = state.range(0),
                      .rows = state.range(1),
                      .hardShare = 0.0,
                      .step = 0.0,
                      .upper = 20.0,
                      .linear = true});
}
BENCHMARK(cheapestDiet)
    ->Args({12, 31})
    ->Args({25, 53})
    ->Args({60, 69})
    ->Args({80, 120})
    ->Unit(benchmark::kMicrosecond);

void nearestDietInWholeGrams(benchmark::State& state) {
  solveInTurn(state, {.columns = state.range(0), .rows = state.range(1), .hardShare = 0.0, .upper = 20.0});
}
BENCHMARK(nearestDietInWholeGrams)->Args({12, 31})->Args({25, 10})->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tarebowl::solver
