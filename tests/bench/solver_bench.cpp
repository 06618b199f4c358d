// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Solves over real foods (the Indian Food Composition Tables 2017) beside their floor, an Eigen LLT
// factor-and-solve of as many columns, and beside general solvers of other people, all in the same run.
// table.py beside this file prints what comes out against the bars.
#include "core/solver/conflict.h"
#include "core/solver/continuous_solver.h"
#include "core/solver/scan.h"
#include "core/solver/solve.h"
#include "tests/bench/over_instances.h"
#ifdef TAREBOWL_OTHER_SOLVERS
#include "tests/reference/other_solvers.h"
#endif

#include <Eigen/Cholesky>

namespace tarebowl::bench {
namespace {

using reference::ProgramKind;
using solver::ContinuousProgram;
using solver::ContinuousSolver;
using solver::Program;
using solver::Status;
using Aim = ProgramKind::Aim;
using Targets = ProgramKind::Targets;

/// A unit of shortfall weighs as much as so much of the objective.
constexpr double kLambda = 10.0;
constexpr double kMove = 0.02;
constexpr double kNineteenOfTwenty = 1.6448536269514722;  // standard deviations

std::vector<ProgramKind> sizes(Targets targets, Aim aim) {
  std::vector<ProgramKind> kinds{reference::kSmall, reference::kMedium, reference::kLarge,
                                 reference::kLargest};
  for (ProgramKind& kind : kinds) {
    kind.targets = targets;
    kind.aim = aim;
  }
  return kinds;
}

void count(benchmark::State& state, const char* what, bool yes) {
  state.counters[what] += yes ? 1 : 0;
}

double choleskyOfTheSize(benchmark::State&, const Program& program) {
  const Eigen::Index n = program.variableCount();
  const Eigen::MatrixXd half = Eigen::MatrixXd::Random(n, n);
  const Eigen::MatrixXd matrix = half * half.transpose() + Eigen::MatrixXd::Identity(n, n);
  const Eigen::VectorXd right = Eigen::VectorXd::Random(n);
  return secondsOf([&] {
    const Eigen::VectorXd x = matrix.llt().solve(right);
    benchmark::DoNotOptimize(x.data());
  });
}

double nearestCold(benchmark::State& state, const Program& program) {
  ContinuousSolver solver;
  const double seconds = secondsOf([&] {
    solver.assign(ContinuousProgram::of(program));
    solver.solveAtPrice(kLambda);
    benchmark::DoNotOptimize(solver.x().data());
  });
  count(state, "failed", solver.status() != Status::Optimal);
  return seconds;
}

/// Each row in turn moves by 2 % and back.
double nearestWarm(benchmark::State& state, const Program& program) {
  ContinuousSolver solver(ContinuousProgram::of(program));
  solver.solveAtPrice(kLambda);
  Eigen::Index move = 0;
  int failed = 0;
  const double seconds = secondsOf([&] {
    const Eigen::Index row = move / 2 % program.rowCount();
    const double factor = move++ % 2 == 0 ? 1.0 + kMove : 1.0;
    solver.setRowBounds(row, program.rowLower[row] * factor, program.rowUpper[row] * factor);
    failed += solver.solveAtPrice(kLambda) == Status::Optimal ? 0 : 1;
    benchmark::DoNotOptimize(solver.x().data());
  });
  count(state, "failed", failed > 0);
  return seconds;
}

double solveFromTheProgram(benchmark::State& state, const Program& program) {
  bool failed = false;
  bool unproved = false;
  const double seconds = secondsOf([&] {
    const solver::Solution solution = solver::solve(program);
    failed = solution.status != Status::Optimal;
    unproved = solution.gap > 0.0;
    benchmark::DoNotOptimize(solution.objective);
  });
  count(state, "failed", failed);
  count(state, "unproved", unproved);
  return seconds;
}

double minimalConflict(benchmark::State& state, const Program& program) {
  std::vector<solver::Rule> rules;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) rules.push_back({{i}, {}});
  bool empty = false;
  const double seconds = secondsOf([&] {
    const solver::Conflict conflict = solver::findConflict(program, rules, true);
    empty = conflict.empty() || !conflict.minimal;
    benchmark::DoNotOptimize(conflict.rules.data());
  });
  count(state, "failed", empty);
  return seconds;
}

/// A thousand candidates in the place of the first food, each a mix of two of the program's own; a thread's
/// time for one of them.
double scanned(benchmark::State& state, const Program& program) {
  constexpr std::size_t kCandidates = 1'000;
  const Eigen::Index n = program.variableCount();
  std::vector<std::vector<double>> mixes(kCandidates);
  std::vector<ContinuousSolver::Column> candidates;
  for (std::size_t k = 0; k < kCandidates; ++k) {
    const auto first = static_cast<Eigen::Index>(k) % n;
    const auto second = static_cast<Eigen::Index>(k / 7) % n;
    const double share = static_cast<double>(k % 101) / 100.0;
    const Eigen::VectorXd mix = share * program.rows.col(first) + (1.0 - share) * program.rows.col(second);
    mixes[k].assign(mix.begin(), mix.end());
    candidates.push_back({mixes[k], program.lower[first], program.upper[first], program.centre[first],
                          program.curvature[first], program.cost[first]});
  }
  const double start = threadSeconds();
  const std::vector<solver::ScanResult> results = solver::scan(program, 0, candidates, {1, {}});
  const double seconds = threadSeconds() - start;
  count(state, "failed", std::ranges::any_of(results, [](const solver::ScanResult& result) {
          return result.status != Status::Optimal;
        }));
  return seconds / kCandidates;
}

#ifdef TAREBOWL_OTHER_SOLVERS
using reference::LinearProgram;
using Question = LinearProgram (*)(const Program&);

LinearProgram costWithinBands(const Program& program) {
  return reference::leastCost(program, 0.0);
}

template <class Other>
Timed otherCold(Question question) {
  return [question](benchmark::State& state, const Program& program) {
    const LinearProgram linear = question(program);
    bool solved = false;
    const double seconds = secondsOf([&] {
      Other other(linear);
      solved = other.solve().has_value();
    });
    count(state, "failed", !solved);
    return seconds;
  };
}

template <class Other>
Timed otherWarm(Question question) {
  return [question](benchmark::State& state, const Program& program) {
    Other other(question(program));
    bool solved = other.solve().has_value();
    Eigen::Index move = 0;
    const double seconds = secondsOf([&] {
      const Eigen::Index row = move / 2 % program.rowCount();
      const double factor = move++ % 2 == 0 ? 1.0 + kMove : 1.0;
      other.moveRow(static_cast<int>(row), program.rowLower[row] * factor, program.rowUpper[row] * factor);
      solved = other.solve().has_value() && solved;
    });
    count(state, "failed", !solved);
    return seconds;
  };
}

void registerOthers() {
  const auto unmet = sizes(Targets::Unmet, Aim::ShortfallOnly);
  registerSizes("least_shortfall_cold/glpk", unmet, otherCold<reference::Glpk>(reference::leastShortfall));
  registerSizes("least_shortfall_cold/clp", unmet, otherCold<reference::Clp>(reference::leastShortfall));
  registerSizes("least_shortfall_warm/glpk", unmet, otherWarm<reference::Glpk>(reference::leastShortfall));
  registerSizes("least_shortfall_warm/clp", unmet, otherWarm<reference::Clp>(reference::leastShortfall));
  const auto cheapest = sizes(Targets::Hard, Aim::Cheapest);
  registerSizes("cheapest_cold/glpk", cheapest, otherCold<reference::Glpk>(costWithinBands));
  registerSizes("cheapest_cold/clp", cheapest, otherCold<reference::Clp>(costWithinBands));
}
#else
void registerOthers() {}
#endif

void registerOwn() {
  registerSizes("floor", sizes(Targets::Met, Aim::Nearest), choleskyOfTheSize);
  for (const auto& [name, targets] : {std::pair{"met", Targets::Met}, std::pair{"unmet", Targets::Unmet}}) {
    const auto kinds = sizes(targets, Aim::Nearest);
    registerSizes(std::string("nearest_cold/") + name, kinds, nearestCold);
    registerSizes(std::string("nearest_warm/") + name, kinds, nearestWarm);
    registerSizes(std::string("lexicographic_cold/") + name, kinds, solveFromTheProgram);
  }
  registerSizes("least_shortfall_cold/tarebowl", sizes(Targets::Unmet, Aim::ShortfallOnly),
                solveFromTheProgram);
  registerSizes("cheapest_cold/tarebowl", sizes(Targets::Hard, Aim::Cheapest), solveFromTheProgram);
  ProgramKind choices = reference::kLarge;
  choices.twoOfSix = true;
  registerSizes("choices_two_of_six_twice/met", {choices}, solveFromTheProgram);
  choices.targets = Targets::Unmet;
  registerSizes("choices_two_of_six_twice/unmet", {choices}, solveFromTheProgram);
  for (const auto& [name, targets] : {std::pair{"met", Targets::Met}, std::pair{"unmet", Targets::Unmet}}) {
    auto guarded = sizes(targets, Aim::Nearest);
    registerSizes(std::string("scan_per_candidate/") + name, {guarded[0], guarded[1]}, scanned);
    for (ProgramKind& kind : guarded) kind.guard = kNineteenOfTwenty;
    registerSizes(std::string("chance_cold/") + name, {guarded[0], guarded[1]}, solveFromTheProgram);
  }
  registerSizes("minimal_conflict", sizes(Targets::Unmet, Aim::Nearest), minimalConflict);
}

}  // namespace
}  // namespace tarebowl::bench

int main(int argc, char** argv) {
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  tarebowl::bench::registerOwn();
  tarebowl::bench::registerOthers();
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
}
