// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/whole_steps.h"

#include "core/solver/branch_and_bound.h"
#include "core/solver/continuous.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

/// How long a point that holds every row is looked for before the first question is asked in full.
constexpr std::int64_t kNodesToFirstPoint = 4000;

class WholeSteps {
 public:
  WholeSteps(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline)
      : program_(program), limits_(limits), deadline_(deadline) {}

  Solution solve() {
    const Box box{program_.lower, program_.upper};
    const ContinuousAnswer relaxed = leastViolation(program_, box);
    if (relaxed.status == Status::Infeasible) return failed(Status::Infeasible);
    Solution solution = bothStages(relaxed.status == Status::Optimal && relaxed.violation <= 0.0);
    solution.nodes = nodes_;
    if (solution.status != Status::Optimal || relaxed.status != Status::Optimal) return solution;
    // Multipliers say what a bound costs at the margin; on a grid there is no margin, so those of the
    // relaxation are given.
    const ContinuousAnswer margin = leastObjective(program_, box, relaxed.violation);
    if (margin.status == Status::Optimal && margin.rowMultipliers.size() == program_.rowScale.size())
      solution.multipliers = margin.rowMultipliers.cwiseQuotient(program_.rowScale);
    return solution;
  }

 private:
  /// Where the relaxation needs no violation the grid usually needs none either: the second question is asked
  /// at once, every row holding. Only where no such point is found soon is the first question worth its
  /// price.
  Solution bothStages(bool relaxationHolds) {
    if (relaxationHolds) {
      const SearchResult hard = holdingAllRows({.nodesToFirst = kNodesToFirstPoint});
      if (hard.best) return ofObjective(hard);
    }
    const SearchResult first =
        look({Stage::Kind::LeastViolation, 0.0, 1.0}, {}, Clock::now() + (deadline_ - Clock::now()) * 3 / 5);
    if (!first.best) return failed(first.closed ? Status::Infeasible : Status::Stopped);
    if (first.best->violation <= violationBudget(0.0))
      return ofObjective(holdingAllRows({.incumbent = first.best}));
    const Stage stage{Stage::Kind::ObjectiveBudget, violationBudget(first.best->violation), 1.0};
    SearchResult second = look(stage, {.incumbent = first.best, .regions = first.ties}, deadline_);
    Solution solution = ofObjective(second);
    if (!first.closed) solution.gap = gap(first.best->violation, std::max(0.0, first.bound));
    return solution;
  }

  SearchResult holdingAllRows(SearchStart start) {
    return look({Stage::Kind::ObjectiveHard, violationBudget(0.0), 1.0}, std::move(start), deadline_);
  }

  SearchResult look(const Stage& stage, SearchStart start, Clock::time_point deadline) {
    SearchResult result = search(program_, stage, std::move(start), limits_, deadline);
    nodes_ += result.nodes;
    return result;
  }

  [[nodiscard]] Solution ofObjective(const SearchResult& result) const {
    const bool isLinear = (program_.source->curvature.array() <= 0.0).any();
    if (result.pressesGenerousLimit && isLinear) return failed(Status::Unbounded, "no limit");
    Solution solution;
    solution.status = Status::Optimal;
    solution.x = program_.toSource(result.best->z);
    solution.violation = result.best->violation;
    solution.objective = result.best->objective;
    if (!result.closed) solution.gap = gap(solution.objective, result.bound);
    return solution;
  }

  static double gap(double value, double bound) {
    return std::max(0.0, value - bound) / std::max(1e-12, std::abs(value));
  }

  static Solution failed(Status status, std::string reason = {}) {
    Solution solution;
    solution.status = status;
    solution.reason = status == Status::Stopped ? "no answer within the limits" : std::move(reason);
    return solution;
  }

  const ScaledProgram& program_;
  const Limits& limits_;
  Clock::time_point deadline_;
  std::int64_t nodes_ = 0;
};

}  // namespace

Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits,
                         std::chrono::steady_clock::time_point deadline) {
  return WholeSteps(program, limits, deadline).solve();
}

}  // namespace tarebowl::solver
