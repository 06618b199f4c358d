// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_best.h"

#include "core/diet/rotation_bounds.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

constexpr double kClosed = 1e-9;
constexpr std::int64_t kPartOfNodes = 8;  // that a bound may take at most
constexpr double kTimeForWhole = 0.15;    // of what is left
constexpr int kMovesAtOnce = 20;          // of the bound by days apart
constexpr Index kMostPlaces = 130;        // blocks times foods of a relaxation

std::array<double, 4> inOrder(const PlanValue& value) {
  return {value.period, value.daily, value.wishes, value.objective};
}

/// Days alike together, where that stays a small program; else all together, which bounds less closely.
DayBlocks blocksOf(const RotationModel& model) {
  DayBlocks alike = alikeTogether(model);
  const auto places = static_cast<Index>(alike.size()) * model.foods;
  return places <= kMostPlaces ? alike : allTogether(model);
}

}  // namespace

BestPlan::BestPlan(const RotationModel& model, double enoughGap) : model_(model), enoughGap_(enoughGap) {
  wholeWasAsked_.fill({-1.0, -1.0, -1.0});  // never
  for (std::size_t i = 0; i < found_.bound.size(); ++i) found_.bound[i] = floorOf(i);
}

SearchedPlan BestPlan::taken(const RotationEffort& effort) && {
  found_.nodes = effort.nodes();
  return std::move(found_);
}

bool BestPlan::keep(const ValuedPlan& plan, const RotationEffort& effort) {
  if (!isThere()) found_.firstPlan = effort.time();
  if (isThere() && !plan.value.isBetterThan(found_.value)) return false;
  found_.grams = plan.grams;
  found_.value = plan.value;
  forgetBounds();
  return true;
}

void BestPlan::prove(const std::array<double, 4>& bound) {
  found_.bound = bound;
  isProven_ = true;
}

/// Below this nothing comes in any case.
double BestPlan::floorOf(std::size_t question) const {
  const bool isShortfall = question < static_cast<std::size_t>(RotationStage::Objective);
  return isShortfall || model_.isDistance ? 0.0 : -solver::kInfinity;
}

/// Bounds hold within what may be missed in the questions before: where that has become more, they are asked
/// anew.
void BestPlan::forgetBounds() {
  const auto missed = inOrder(found_.value);
  for (std::size_t i = 0; i < boundsAreWithin_.size(); ++i)
    if (missed[i] > boundsAreWithin_[i] + kClosed)
      for (std::size_t later = i + 1; later < found_.bound.size(); ++later)
        found_.bound[later] = floorOf(later);
}

void BestPlan::raiseBounds(RotationEffort& effort, BoundBy by) {
  if (!isThere()) return;
  const auto reached = inOrder(found_.value);
  boundsAreWithin_ = {reached[0], reached[1], reached[2]};
  RotationBudgets budgets{0.0, 0.0, 0.0};
  for (const RotationStage stage : kRotationStages) {
    const auto i = static_cast<std::size_t>(stage);
    const double floor = floorOf(i);
    double& bound = found_.bound[i];
    if (reached[i] > floor + kClosed) {
      const RotationBound relaxed =
          relaxedBound(model_, blocksOf(model_), stage, budgets, WithDailyZones::Yes);
      bound = std::max(bound, relaxed.value);
      if (by != BoundBy::DaysTogether && reached[i] - bound > kClosed && !effort.isOver())
        raiseByWholeSteps(stage, budgets, effort, bound);
    }
    // A bound above what was reached would be no bound: beyond rounding, nothing is claimed.
    const double rounding = kBudgetRounding * std::max(1.0, std::abs(reached[i]));
    bound = bound <= reached[i] + rounding ? std::min(bound, reached[i]) : floor;
    if (stage < RotationStage::Objective) budgets[i] = reached[i] * (1.0 + kBudgetRounding);
  }
  while (by == BoundBy::DaysApart && missesNothingOnDays() && mayRaiseDayByDay() && !effort.isOver())
    take(dayBound(effort, kMovesAtOnce), effort);
}

void BestPlan::raiseByWholeSteps(RotationStage stage, const RotationBudgets& budgets, RotationEffort& effort,
                                 double& bound) {
  RotationBudgets& asked = wholeWasAsked_[static_cast<std::size_t>(stage)];
  if (asked == budgets) return;
  asked = budgets;
  std::int64_t nodes = 0;
  const RotationBound whole = wholeBound(model_, allTogether(model_), stage, budgets,
                                         effort.limits(effort.most() / kPartOfNodes, kTimeForWhole), nodes);
  effort.spend(nodes);
  bound = std::max(bound, whole.value);
  if (stage == RotationStage::Objective && whole.days.size() > 0) wholeDays_ = whole.days;
}

RotationBudgets BestPlan::reachedBudgets() const {
  const auto reached = inOrder(found_.value);
  RotationBudgets budgets{};
  for (std::size_t i = 0; i < budgets.size(); ++i) budgets[i] = reached[i] * (1.0 + kBudgetRounding);
  return budgets;
}

/// Of a plan that misses something on the days: nothing is enough, a better one may cost more.
double BestPlan::enoughOfObjective() const {
  if (!missesNothingOnDays()) return solver::kInfinity;
  return found_.value.objective - enoughGap_ * std::abs(found_.value.objective);
}

bool BestPlan::mayRaiseDayByDay() const {
  const auto objective = static_cast<std::size_t>(RotationStage::Objective);
  if (!isThere() || isProven_ || found_.bound[objective] >= enoughOfObjective()) return false;
  RotationBudgets budgets = reachedBudgets();
  budgets[static_cast<std::size_t>(RotationStage::Daily)] = 0.0;
  return !dayByDay_ || !dayByDay_->isWithin(budgets) || !dayByDay_->isAtEnd();
}

BestPlan::DayBound BestPlan::dayBound(const RotationEffort& effort, int moves) {
  DayBound bound{.within = reachedBudgets()};
  bound.within[static_cast<std::size_t>(RotationStage::Daily)] = 0.0;
  if (!dayByDay_ || !dayByDay_->isWithin(bound.within)) dayByDay_.emplace(model_, bound.within);
  const auto objective = static_cast<std::size_t>(RotationStage::Objective);
  bound.value = dayByDay_->raise(
      *found_.grams, {.known = found_.bound[objective], .enough = enoughOfObjective(), .moves = moves},
      effort.limits(effort.most() / kPartOfNodes), bound.nodes);
  return bound;
}

void BestPlan::take(const DayBound& bound, RotationEffort& effort) {
  effort.spend(bound.nodes);
  const auto reached = inOrder(found_.value);
  for (std::size_t i = 0; i < bound.within.size(); ++i)
    if (reached[i] > bound.within[i] + kClosed) return;
  const double most = reached.back() + kBudgetRounding * std::max(1.0, std::abs(reached.back()));
  if (bound.value <= most)  // above what was reached it would be no bound
    found_.bound.back() = std::max(found_.bound.back(), std::min(bound.value, reached.back()));
}

bool BestPlan::isShortless(std::size_t questions) const {
  if (!isThere()) return false;
  const auto reached = inOrder(found_.value);
  for (std::size_t i = 0; i < questions; ++i)
    if (reached[i] - found_.bound[i] > std::max(kClosed, kBudgetRounding * std::abs(reached[i])))
      return false;
  return true;
}

bool BestPlan::missesNothingOnDays() const {
  return isThere() && found_.value.daily <= kClosed;
}

bool BestPlan::isEnough() const {
  if (!isThere()) return false;
  if (isProven_) return true;
  const auto reached = inOrder(found_.value);
  for (std::size_t i = 0; i < reached.size(); ++i)
    if (reached[i] - found_.bound[i] > std::max(kClosed, enoughGap_ * std::abs(reached[i]))) return false;
  return true;
}

}  // namespace tarebowl::diet
