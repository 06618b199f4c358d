// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation.h"

#include "core/diet/food_safety.h"
#include "core/diet/measure.h"
#include "core/diet/rotation_check.h"
#include "core/diet/rotation_search.h"
#include "core/diet/rotation_standing.h"
#include "core/diet/scale_step.h"
#include "core/diet/verification.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using Eigen::Index;

std::chrono::microseconds inMicroseconds(Clock::duration duration) {
  return std::chrono::duration_cast<std::chrono::microseconds>(duration);
}

RotationPlan ended(RotationStatus status, std::string reason) {
  RotationPlan plan;
  plan.status = status;
  plan.reason = std::move(reason);
  return plan;
}

/// What a keeper would weigh.
Diet dayOf(const RotationModel& model, const solver::RowMatrix& grams, Index day) {
  Diet diet;
  for (Index j = 0; j < model.foods; ++j) {
    const quantity::Grams exact(grams(day, j));
    const bool isFixed = model.cell(day, j).isFixed;
    diet.push_back(isFixed ? exact : nearestOnScale(exact, quantity::Grams(model.step[j])));
  }
  return diet;
}

RotationPlan planFrom(const RotationProblem& problem, const RotationModel& model,
                      const SearchedPlan& searched) {
  RotationPlan plan;
  for (Index d = 0; d < model.days; ++d) plan.days.push_back(dayOf(model, *searched.grams, d));
  const PlanValue& value = searched.value;
  plan.period = {value.period, searched.bound[0]};
  plan.daily = {value.daily, searched.bound[1]};
  plan.wishes = {value.wishes, searched.bound[2]};
  plan.objective = {value.objective, searched.bound[3]};
  if (model.isNegated) plan.objective = {-value.objective, -searched.bound[3]};
  RotationStanding standing = standingOf(problem, plan.days);
  plan.periodBalance = std::move(standing.period);
  plan.dayBalances = std::move(standing.days);
  const bool holds = value.period <= kNoShortfall && value.daily <= kNoShortfall;
  plan.status = holds ? RotationStatus::Balanced : RotationStatus::Compromise;
  if (!agree(plan.periodBalance.shortfall, value.period))
    return ended(RotationStatus::Failed,
                 fmt::format("shortfall: {} claimed {}", plan.periodBalance.shortfall, value.period));
  if (auto broken = brokenRotationRule(problem, plan)) return ended(RotationStatus::Failed, *broken);
  return plan;
}

/// A plan from before has the days and the foods of the problem.
void requireSameShape(const RotationProblem& problem, const std::vector<Diet>& start) {
  const auto fits = [&](const Diet& day) { return day.size() == problem.base.foods.size(); };
  if (start.empty()) return;
  if (start.size() != static_cast<std::size_t>(problem.rules.days) || !std::ranges::all_of(start, fits))
    throw std::invalid_argument("start: days and foods are not those of the rotation");
}

RotationPlan rotateAllowed(const RotationProblem& problem, const RotationOptions& options) {
  if (auto why = unsolvable(problem.base)) return ended(RotationStatus::Failed, *why);
  if (auto why = uncountable(measuresOf(problem.base))) return ended(RotationStatus::Failed, *why);
  requireSameShape(problem, options.start);
  const BuiltModel built = buildModel(problem);
  if (!built.impossible.empty()) return ended(RotationStatus::Impossible, built.impossible);
  const SearchedPlan searched = searchRotation(built.model, options);
  RotationPlan plan;
  if (searched.grams)
    plan = planFrom(problem, built.model, searched);
  else if (searched.isImpossible)
    plan = ended(RotationStatus::Impossible, "hard rules");
  else
    plan = ended(RotationStatus::Stopped, "no plan found within the limits");
  plan.nodes = searched.nodes;
  plan.firstPlan = inMicroseconds(searched.firstPlan);
  return plan;
}

}  // namespace

double Reached::gap() const {
  constexpr double kSame = 1e-9;
  const double left = std::abs(value - bound);
  return left <= kSame ? 0.0 : left / std::max(std::abs(value), kSame);
}

std::string_view symbolOf(RotationStatus status) {
  switch (status) {
    case RotationStatus::Balanced:
      return "balanced";
    case RotationStatus::Compromise:
      return "compromise";
    case RotationStatus::Impossible:
      return "impossible";
    case RotationStatus::Stopped:
      return "stopped";
    case RotationStatus::Failed:
      break;
  }
  return "failed";
}

RotationPlan rotate(const RotationProblem& problem, const RotationOptions& options) {
  const Clock::time_point start = Clock::now();
  RotationProblem allowed = problem;
  if (bansAnything(problem.base)) allowed.base = withoutBanned(problem.base);
  RotationPlan plan = rotateAllowed(allowed, options);
  plan.time = inMicroseconds(Clock::now() - start);
  return plan;
}

}  // namespace tarebowl::diet
