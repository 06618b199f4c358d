// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/scan.h"

#include "core/solver/linear_solver.h"

#include <algorithm>
#include <atomic>
#include <thread>

namespace tarebowl::solver {
namespace {

constexpr std::size_t kPortion = 32;  // candidates a thread takes at a time

/// A place for the candidates: a further column that is not used.
Program withPlace(const Program& program) {
  Program extended = program;
  const Eigen::Index n = program.variableCount();
  extended.rows.conservativeResize(Eigen::NoChange, n + 1);
  extended.rows.col(n).setZero();
  for (Eigen::VectorXd* part :
       {&extended.lower, &extended.upper, &extended.centre, &extended.curvature, &extended.cost}) {
    part->conservativeResize(n + 1);
    (*part)[n] = 0.0;
  }
  extended.curvature[n] = n > 0 ? program.curvature.maxCoeff() : 1.0;
  return extended;
}

template <class Solver>
ScanResult resultOf(const Solver& solver, Eigen::Index column) {
  if (solver.status() != Status::Optimal) return {solver.status(), 0.0, 0.0, 0.0};
  return {Status::Optimal, solver.violation(), solver.objective(), solver.x()[column]};
}

/// Every candidate from where common is, in portions that the threads take in turn.
template <class Solver>
std::vector<ScanResult> scanFrom(const Solver& common, Eigen::Index place,
                                 std::span<const ContinuousSolver::Column> candidates,
                                 const ScanLimits& limits) {
  std::vector<ScanResult> results(candidates.size());
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    Solver solver = common;
    while (!limits.stop.stop_requested()) {
      const std::size_t from = next.fetch_add(kPortion);
      if (from >= candidates.size()) return;
      const std::size_t to = std::min(from + kPortion, candidates.size());
      for (std::size_t k = from; k < to; ++k) {
        solver = common;
        solver.replaceColumn(place, candidates[k]);
        solver.solve();
        results[k] = resultOf(solver, place);
      }
    }
  };
  std::vector<std::jthread> others;
  for (int thread = 1; thread < limits.threads; ++thread) others.emplace_back(work);
  work();
  others.clear();  // joins
  return results;
}

/// Without the column: whatever takes its place then only has to come in.
LinearSolver linearWithout(const Program& program, Eigen::Index column) {
  LinearSolver solver(ContinuousProgram::of(program));
  solver.setColumnBounds(column, 0.0, 0.0);
  solver.solve();
  return solver;
}

}  // namespace

std::vector<ScanResult> scan(const Program& program, std::optional<Eigen::Index> column,
                             std::span<const ContinuousSolver::Column> candidates, const ScanLimits& limits) {
  const bool isLinear = (program.curvature.array() == 0.0).all();
  const Program base = column ? program : withPlace(program);
  const Eigen::Index place = column.value_or(program.variableCount());
  if (isLinear) return scanFrom(linearWithout(base, place), place, candidates, limits);
  ContinuousSolver common(ContinuousProgram::of(base));
  common.solve();
  return scanFrom(common, place, candidates, limits);
}

}  // namespace tarebowl::solver
