// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/whole_steps.h"

#include "core/solver/continuous.h"
#include "core/solver/lattice_search.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

using Clock = std::chrono::steady_clock;

/// How long a point that holds every row is looked for before the first question is asked in full.
constexpr std::int64_t kNodesToFirstPoint = 4000;

const Stage kHoldingAllRows{Stage::Kind::ObjectiveHard, violationBudget(0.0), 1.0};

/// A point of the source's columns, those that move in steps on the grid exactly.
Incumbent onGrid(const ScaledProgram& program, const Eigen::VectorXd& x) {
  Eigen::VectorXd z = Eigen::VectorXd::Zero(program.unit.size());
  z.head(x.size()) = x.cwiseQuotient(program.unit.head(x.size()));
  for (Eigen::Index j = 0; j < x.size(); ++j)
    if (program.onGrid[std::size_t(j)] != 0) z[j] = std::round(z[j]);
  return evaluate(program, std::move(z));
}

class WholeSteps {
 public:
  WholeSteps(const ScaledProgram& program, const StageSearch& search, Clock::time_point deadline,
             std::optional<Incumbent> known)
      : program_(program), search_(search), deadline_(deadline), known_(std::move(known)) {}

  /// Where the relaxation needs no violation the grid usually needs none either: the second question is asked
  /// at once, every row holding. Only where no such point is found soon is the first question worth its
  /// price.
  Solution bothStages(bool relaxationHolds) {
    if (relaxationHolds && known_ && isAcceptable(program_, kHoldingAllRows, *known_))
      return ofObjective(holdingAllRows({.incumbent = known_}));
    if (relaxationHolds) {
      const SearchResult hard = holdingAllRows({.nodesToFirst = kNodesToFirstPoint});
      if (hard.best) return ofObjective(hard);
    }
    const SearchResult first = look({Stage::Kind::LeastViolation, 0.0, 1.0}, {.incumbent = known_},
                                    Clock::now() + (deadline_ - Clock::now()) * 3 / 5);
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
    return look(kHoldingAllRows, std::move(start), deadline_);
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
  std::optional<Incumbent> known_;
  std::int64_t nodes_ = 0;
};

}  // namespace

Solution bothStagesOnGrid(const ScaledProgram& program, bool relaxationHolds, const StageSearch& search,
                          Clock::time_point deadline, std::optional<Incumbent> known) {
  return WholeSteps(program, search, deadline, std::move(known)).bothStages(relaxationHolds);
}

Solution solveWholeSteps(const ScaledProgram& program, const Limits& limits, Clock::time_point deadline,
                         const Eigen::VectorXd* known) {
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
  std::optional<Incumbent> start;
  if (known != nullptr) start = onGrid(program, *known);
  Solution solution = bothStagesOnGrid(program, relaxationHolds, look, deadline, std::move(start));
  if (solution.status != Status::Optimal || relaxed.status != Status::Optimal) return solution;
  // Multipliers say what a bound costs at the margin; on a grid there is no margin, so those of the
  // relaxation are given.
  const ContinuousAnswer margin = leastObjective(program, box, relaxed.violation);
  if (margin.status == Status::Optimal && margin.rowMultipliers.size() == program.rowScale.size())
    solution.multipliers = margin.rowMultipliers.cwiseQuotient(program.rowScale);
  return solution;
}

}  // namespace tarebowl::solver
