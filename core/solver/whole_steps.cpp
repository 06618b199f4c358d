// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/whole_steps.h"

#include "core/solver/continuous.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

/// How long a point that holds every row is looked for before the first question is asked in full.
constexpr std::int64_t kNodesToFirstPoint = 4000;

class WholeSteps {
 public:
  WholeSteps(const ScaledProgram& program, const StageSearch& search, Clock::time_point deadline)
      : program_(program), search_(search), deadline_(deadline) {}

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

 private:
  SearchResult holdingAllRows(SearchStart start) {
    return look({Stage::Kind::ObjectiveHard, violationBudget(0.0), 1.0}, std::move(start), deadline_);
  }

  SearchResult look(const Stage& stage, SearchStart start, Clock::time_point deadline) {
    SearchResult result = search_(stage, std::move(start), deadline);
    nodes_ += result.nodes;
    return result;
  }

  [[nodiscard]] Solution ofObjective(const SearchResult& result) const {
    const bool isLinear = (program_.judge->curvature.array() <= 0.0).any();
    if (result.pressesGenerousLimit && isLinear) return failed(Status::Unbounded, "no limit");
    Solution solution;
    solution.status = Status::Optimal;
    solution.x = program_.toJudge(result.best->z);
    solution.nodes = nodes_;
    solution.violation = result.best->violation;
    solution.objective = result.best->objective;
    if (!result.closed) solution.gap = gap(solution.objective, result.bound);
    return solution;
  }

  static double gap(double value, double bound) {
    return std::max(0.0, value - bound) / std::max(1e-12, std::abs(value));
  }

  [[nodiscard]] Solution failed(Status status, std::string reason = {}) const {
    Solution solution;
    solution.nodes = nodes_;
    solution.status = status;
    solution.reason = status == Status::Stopped ? "no answer within the limits" : std::move(reason);
    return solution;
  }

  const ScaledProgram& program_;
  const StageSearch& search_;
  Clock::time_point deadline_;
  std::int64_t nodes_ = 0;
};

}  // namespace

Solution bothStagesOnGrid(const ScaledProgram& program, bool relaxationHolds, const StageSearch& search,
                          Clock::time_point deadline) {
  return WholeSteps(program, search, deadline).bothStages(relaxationHolds);
}

Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline) {
  const Box box{program.lower, program.upper};
  const ContinuousAnswer relaxed = leastViolation(program, box);
  if (relaxed.status == Status::Infeasible) {
    Solution solution;
    solution.status = Status::Infeasible;
    return solution;
  }
  const StageSearch look = [&](const Stage& stage, SearchStart start, Clock::time_point until) {
    return search(program, stage, std::move(start), limits, until);
  };
  const bool relaxationHolds = relaxed.status == Status::Optimal && relaxed.violation <= 0.0;
  Solution solution = bothStagesOnGrid(program, relaxationHolds, look, deadline);
  if (solution.status != Status::Optimal || relaxed.status != Status::Optimal) return solution;
  // Multipliers say what a bound costs at the margin; on a grid there is no margin, so those of the
  // relaxation are given.
  const ContinuousAnswer margin = leastObjective(program, box, relaxed.violation);
  if (margin.status == Status::Optimal && margin.rowMultipliers.size() == program.rowScale.size())
    solution.multipliers = margin.rowMultipliers.cwiseQuotient(program.rowScale);
  return solution;
}

}  // namespace tarebowl::solver
