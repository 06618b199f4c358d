// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/solve.h"

#include "core/diet/ban_conflict.h"
#include "core/diet/conflict.h"
#include "core/diet/food_safety.h"
#include "core/diet/formulation.h"
#include "core/diet/objective.h"
#include "core/diet/scale_step.h"
#include "core/diet/verification.h"
#include "core/solver/fewest.h"
#include "core/solver/solve.h"

#include <fmt/core.h>

#include <algorithm>
#include <span>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;

// The second stage may spend 1e-9 of shortfall on its objective, and a bound that holds with a chance is met
// to 1e-9 or so: what is left within ten times that is no compromise.
constexpr double kStillBalanced = 10 * kNoShortfall;

// Why a diet misses is worth less waiting than the diet.
constexpr std::chrono::milliseconds kMostForConflict{2000};

std::chrono::milliseconds timeLeft(const SolveOptions& options, Clock::time_point start) {
  const auto spent = std::chrono::duration_cast<std::chrono::milliseconds>(Clock::now() - start);
  return std::max(std::chrono::milliseconds(0), options.deadline - spent);
}

DietSolution ended(DietStatus status, std::string reason) {
  DietSolution answer;
  answer.status = status;
  answer.reason = std::move(reason);
  return answer;
}

DietSolution withoutAnswer(const solver::Solution& solution) {
  switch (solution.status) {
    case solver::Status::Infeasible:
      return ended(DietStatus::Impossible, "");
    case solver::Status::Unbounded:
      return ended(DietStatus::Unbounded, solution.reason);
    case solver::Status::Stopped:
      return ended(DietStatus::Stopped, solution.reason);
    default:
      return ended(DietStatus::Failed, solution.reason);
  }
}

/// The grams a keeper would weigh: whole steps as decimal numbers, nothing instead of a trace that is
/// rounding.
Diet weighable(const BalanceProblem& problem, const Eigen::VectorXd& x) {
  Diet grams;
  grams.reserve(problem.foods.size());
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    const quantity::Grams exact(x[static_cast<Eigen::Index>(j)]);
    const quantity::Grams amount =
        problem.wholeSteps ? nearestOnScale(exact, problem.foods[j].scaleStep) : exact;
    grams.push_back(std::max(amount, quantity::Grams(0)));
  }
  return grams;
}

/// What the objective would gain if a bound were raised by all of itself (one of 0: by one unit), at the
/// present rate. A row's multiplier is the rate per unit of the row, above 0 where the upper bound pushes:
/// raising that one lowers what is sought.
std::vector<double> multipliersOf(const BalanceProblem& problem, const Formulation& formulation,
                                  std::span<const Measure> measures, const solver::Solution& solution) {
  std::vector<double> multipliers(measures.size(), 0.0);
  if (solution.multipliers.size() != static_cast<Eigen::Index>(formulation.rows.size())) return multipliers;
  const double sign =
      problem.objective.kind == Objective::Kind::Highest ? 1.0 : -1.0;  // solved as least of the negative
  for (std::size_t row = 0; row < formulation.rows.size(); ++row) {
    const RowOrigin& origin = formulation.rows[row];
    const Measure& measure = measures[origin.measure];
    const double bound = *measure.bound(origin.side);
    const double rows =
        (bound == 0.0 ? 1.0 : bound) * measure.whole.at(solution.x) / measure.shortfallUnit(bound);
    multipliers[origin.measure] += sign * solution.multipliers[static_cast<Eigen::Index>(row)] * rows;
  }
  return multipliers;
}

bool isFewest(const BalanceProblem& problem) {
  return problem.objective.kind == Objective::Kind::FewestFoods;
}

/// What the solver claims of its answer, in the trade's terms.
double claimedObjective(const BalanceProblem& problem, const solver::Solution& solution) {
  if (isFewest(problem)) return solver::usedIn(solution.x);
  return problem.objective.kind == Objective::Kind::Highest ? -solution.objective : solution.objective;
}

/// Where the answer, judged by the balance alone, is not what the solver said.
std::optional<std::string> refutation(const BalanceProblem& problem, const solver::Solution& solution,
                                      const DietSolution& answer) {
  if (auto broken = brokenRule(problem, answer)) return broken;
  if (!agree(answer.shortfall, solution.violation)) {
    return fmt::format("shortfall: {} claimed {}", answer.shortfall, solution.violation);
  }
  const double claimed = claimedObjective(problem, solution);
  if (!agree(answer.objective, claimed))
    return fmt::format("objective: {} claimed {}", answer.objective, claimed);
  return std::nullopt;
}

DietSolution answerFrom(const BalanceProblem& problem, std::span<const Measure> measures,
                        const Formulation& formulation, const Diet& reference,
                        const solver::Solution& solution) {
  DietSolution answer;
  answer.grams = weighable(problem, solution.x);
  answer.balance = balance(problem, answer.grams);
  answer.shortfall = answer.balance.shortfall;
  answer.objective = objectiveOf(problem, reference, answer.grams);
  answer.provenGap = solution.gap;
  answer.multipliers = multipliersOf(problem, formulation, measures, solution);
  if (auto why = refutation(problem, solution, answer)) return ended(DietStatus::Failed, *why);
  answer.status = answer.shortfall <= kStillBalanced ? DietStatus::Balanced : DietStatus::Compromise;
  return answer;
}

/// Which rules cannot hold together: the hard ones of an impossible problem, all of a compromise's.
void addConflict(DietSolution& answer, const Formulation& formulation, std::span<const Measure> measures,
                 const solver::Limits& limits) {
  const bool proved = answer.status == DietStatus::Impossible ||
                      (answer.status == DietStatus::Compromise && answer.provenGap < 1.0);
  if (!proved) return;
  DietConflict conflict =
      findConflict(formulation, measures, answer.status == DietStatus::Impossible, limits);
  answer.conflict = std::move(conflict.ids);
  answer.conflictIsSmallest = conflict.minimal;
  answer.conflictOnlyOnGrid = conflict.onlyOnGrid;
}

DietSolution solveUntimed(const BalanceProblem& problem, const SolveOptions& options,
                          Clock::time_point start) {
  if (auto why = unsolvable(problem)) return ended(DietStatus::Failed, *why);
  const std::vector<Measure> measures = measuresOf(problem);
  if (auto why = uncountable(measures)) return ended(DietStatus::Failed, *why);
  const Diet reference = referenceDiet(problem);
  const Formulation formulation = formulate(problem, measures, reference);
  if (!formulation.program.rows.allFinite()) return ended(DietStatus::Failed, "not-a-number: rows");

  solver::Limits limits;
  limits.deadline = options.deadline;
  limits.stop = options.stop;
  const solver::Solution solution = isFewest(problem) ? solver::solveFewest(formulation.program, limits)
                                                      : solver::solve(formulation.program, limits);
  DietSolution answer = solution.status == solver::Status::Optimal
                            ? answerFrom(problem, measures, formulation, reference, solution)
                            : withoutAnswer(solution);
  if (!options.findConflict) return answer;
  limits.deadline = std::min(kMostForConflict, timeLeft(options, start));
  addConflict(answer, formulation, measures, limits);
  return answer;
}

}  // namespace

std::string_view symbolOf(DietStatus status) {
  switch (status) {
    case DietStatus::Balanced:
      return "balanced";
    case DietStatus::Compromise:
      return "compromise";
    case DietStatus::Impossible:
      return "impossible";
    case DietStatus::Unbounded:
      return "unbounded";
    case DietStatus::Stopped:
      return "stopped";
    case DietStatus::Failed:
      return "failed";
  }
  return "failed";
}

DietSolution solve(const BalanceProblem& problem, const SolveOptions& options) {
  const Clock::time_point start = Clock::now();
  DietSolution answer;
  if (bansAnything(problem)) {
    answer = solveUntimed(withoutBanned(problem), options, start);
    if (!answer.conflict.empty()) addBans(answer, problem, timeLeft(options, start));
  } else {
    answer = solveUntimed(problem, options, start);
  }
  answer.solveTime = std::chrono::duration_cast<std::chrono::microseconds>(Clock::now() - start);
  return answer;
}

}  // namespace tarebowl::diet
