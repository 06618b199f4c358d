// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_search.h"

#include "core/diet/rotation_adapt.h"
#include "core/diet/rotation_best.h"
#include "core/diet/rotation_broken_rules.h"
#include "core/diet/rotation_exact.h"
#include "core/diet/rotation_next_try.h"
#include "core/diet/rotation_tries.h"
#include "core/diet/rotation_wanted.h"

#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

constexpr double kClosed = 1e-9;
constexpr Index kFewCells = 40;  // as many can be decided by branch and bound alone
constexpr double kTimeForFewCells = 0.4;
constexpr std::int64_t kPartForFewCells = 8;
constexpr std::int64_t kPartToAdapt = 4;
constexpr double kTimeToAdapt = 0.5;
constexpr int kTriesToSpread = 200;
constexpr int kIdleTries = 12;        // before bounds are raised …
constexpr int kLongerStage = 2;       // … and so many times as many before days are looked at apart
constexpr int kTriesTogether = 2;     // from the same plan, on two threads …
constexpr int kTriesBesideBound = 4;  // … where other work goes beside them
constexpr int kTriesOfWholeSteps = 8;
constexpr int kMovesBesideTries = 10;
constexpr int kMovesBesideAll = 100;

std::vector<Index> openDays(const RotationModel& model) {
  std::vector<Index> days;
  for (Index d = 0; d < model.days; ++d)
    if (model.isOpen[static_cast<std::size_t>(d)]) days.push_back(d);
  return days;
}

class RotationSearch {
 public:
  RotationSearch(const RotationModel& model, const RotationOptions& options, const RotationEffort& effort)
      : model_(model),
        options_(options),
        effort_(effort),
        next_(model, options.seed),
        best_(model, options.enoughGap) {}

  SearchedPlan run() {
    if (openCells(model_) == 0) {
      takeSettled();
      return std::move(best_).taken(effort_);
    }
    if (const auto wanted = wantedDays(model_)) {
      next_.setWanted(*wanted);
      search();
    } else {
      best_.setImpossible();
    }
    return std::move(best_).taken(effort_);
  }

 private:
  void search() {
    firstPlan();
    best_.raiseBounds(effort_, BoundBy::DaysTogether);
    if (!best_.isEnough()) solveAsItIs();
    if (best_.found().isImpossible) return;
    if (!best_.nothingIsShort()) planAllInTurn();
    if (!best_.nothingIsShort()) reworkDays();
    tryOthers();
    if (!best_.isEnough()) best_.raiseBounds(effort_, BoundBy::DaysApart);
  }

  /// Nothing is to be decided.
  void takeSettled() {
    solver::RowMatrix grams(model_.days, model_.foods);
    for (Index d = 0; d < model_.days; ++d)
      for (Index j = 0; j < model_.foods; ++j) grams(d, j) = model_.cell(d, j).least;
    const PlanValue value = valueOf(model_, grams);
    if (value.broken > kClosed || !keepsRules(model_, grams.array() > 0.0)) return best_.setImpossible();
    best_.keep({grams, value}, effort_);
    best_.prove({value.period, value.daily, value.wishes, value.objective});
  }

  void firstPlan() {
    for (int attempt = 0; attempt < kTriesToSpread && !best_.isThere() && !effort_.isOver(); ++attempt)
      if (const auto pattern = next_.spread(0.05 * attempt))
        take(tried(model_, *pattern, best_.found(), effort_));
  }

  /// Few cells: every question by branch and bound over the days as they are.
  void solveAsItIs() {
    if (openCells(model_) > kFewCells || effort_.isOver()) return;
    const ExactPlan exact =
        exactPlan(model_, effort_.limits(options_.nodes / kPartForFewCells, kTimeForFewCells));
    effort_.spend(exact.nodes);
    if (exact.isImpossible && !best_.isThere()) best_.setImpossible();
    if (!exact.grams) return;
    const PlanValue value = valueOf(model_, *exact.grams);
    if (value.broken > kClosed) return;
    best_.keep({*exact.grams, value}, effort_);
    if (exact.isComplete) best_.prove(exact.bound);
  }

  /// Each day by itself, foods and grams at once, while that makes the plan better.
  void reworkDays() {
    bool helped = best_.isThere();
    while (helped) {
      helped = false;
      for (Index d = 0; d < model_.days && !best_.isEnough() && !effort_.isOver(); ++d)
        helped |= take(tried(model_, DaysAnew{{d}}, best_.found(), effort_));
    }
  }

  /// Until so many in a row have bettered nothing. Whenever some in a row have not, perhaps there is nothing
  /// better: bounds are asked that take longer, and tries that take longer go beside the others.
  void tryOthers() {
    int idle = 0;
    int inStage = 0;
    while (idle < options_.rounds && !best_.isEnough() && !effort_.isOver()) {
      std::vector<RotationTry> tries;
      const int together = looksAtDays() ? kTriesBesideBound : kTriesTogether;
      for (int i = 0; i < together; ++i)
        if (auto another = next_.after(best_.found(), looksAtDays())) tries.push_back(std::move(*another));
      const bool wantsBound = looksAtDays() && best_.missesNothingOnDays() && best_.mayRaiseDayByDay();
      const bool isBetter = tryTogether(tries, wantsBound ? kMovesBesideTries : 0);
      idle = isBetter ? 0 : idle + together;
      inStage += together;
      const int patience = by_ == BoundBy::DaysTogether ? 1 : kLongerStage;
      if (!best_.isThere() || by_ == BoundBy::DaysApart) continue;
      if (idle < kIdleTries * patience && inStage < 2 * kIdleTries * patience) continue;
      goFurther();
      inStage = 0;
    }
  }

  void goFurther() {
    if (by_ == BoundBy::WholeSteps) {
      by_ = BoundBy::DaysApart;
      return planAllInTurn();
    }
    by_ = BoundBy::WholeSteps;
    best_.raiseBounds(effort_, by_);
    if (const auto& days = best_.daysInWholeSteps()) spreadAnew(*days);
  }

  void spreadAnew(const Eigen::VectorXd& days) {
    next_.setWanted(days);
    std::vector<RotationTry> tries;
    for (int i = 0; i < kTriesOfWholeSteps; ++i)
      if (auto pattern = next_.spread(0.05 * i)) tries.emplace_back(std::move(*pattern));
    static_cast<void>(tryTogether(tries, 0));
  }

  /// Once: it takes long, and from another plan comes the same.
  void planAllInTurn() {
    if (std::exchange(wereInTurn_, true)) return;
    static_cast<void>(
        tryTogether({DaysInTurn{openDays(model_)}}, best_.mayRaiseDayByDay() ? kMovesBesideAll : 0));
  }

  /// Beside the tries the bound by days apart goes on, so many moves.
  bool tryTogether(const std::vector<RotationTry>& tries, int moves) {
    BestPlan::DayBound bound;
    std::function<void()> beside;
    if (moves > 0) beside = [&] { bound = best_.dayBound(effort_, moves); };
    const std::vector<Tried> all = triedTogether(model_, tries, best_.found(), effort_, beside);
    bool isBetter = false;
    const std::optional<solver::RowMatrix> before = best_.found().grams;
    for (std::size_t i = 0; i < all.size(); ++i) {
      const bool helped = take(all[i]) || takeBeside(tries[i], all[i], before);
      next_.learn(tries[i], all[i], helped);
      isBetter |= helped;
    }
    if (moves > 0) best_.take(bound, effort_);
    return isBetter;
  }

  /// Once the quickest tries have ended, or the days were found hard to feed.
  [[nodiscard]] bool looksAtDays() const { return by_ != BoundBy::DaysTogether || wereInTurn_; }

  /// Days that were planned anew, beside others that were so at the same time.
  bool takeBeside(const RotationTry& what, const Tried& tried,
                  const std::optional<solver::RowMatrix>& before) {
    const auto* anew = std::get_if<DaysAnew>(&what);
    if (anew == nullptr || !tried.plan || !before || *best_.found().grams == *before) return false;
    ValuedPlan both{*best_.found().grams, {}};
    for (const Index d : anew->days) both.grams.row(d) = tried.plan->grams.row(d);
    if (!keepsRules(model_, both.grams.array() > 0.0) || !hasStock(both.grams)) return false;
    both.value = valueOf(model_, both.grams);
    return both.value.broken <= kClosed && best_.keep(both, effort_);
  }

  [[nodiscard]] bool hasStock(const solver::RowMatrix& plan) const {
    for (Index j = 0; j < model_.foods; ++j)
      if (plan.col(j).sum() > model_.mostGrams[j] + kGramsRounding) return false;
    return true;
  }

  bool take(const Tried& tried) {
    effort_.spend(tried.nodes);
    return tried.plan && best_.keep(*tried.plan, effort_);
  }

  const RotationModel& model_;
  const RotationOptions& options_;
  RotationEffort effort_;
  NextTry next_;
  BestPlan best_;
  bool wereInTurn_ = false;
  BoundBy by_ = BoundBy::DaysTogether;  ///< beyond it, days are planned anew beside patterns
};

solver::RowMatrix startPlan(const RotationModel& model, const std::vector<Diet>& start) {
  solver::RowMatrix plan(model.days, model.foods);
  for (Index d = 0; d < model.days; ++d)
    for (Index j = 0; j < model.foods; ++j)
      plan(d, j) = start[static_cast<std::size_t>(d)][static_cast<std::size_t>(j)].value();
  return plan;
}

/// From a plan that was there before.
SearchedPlan adapted(const RotationModel& model, const RotationOptions& options, RotationEffort effort) {
  BestPlan near(model, options.enoughGap);
  std::int64_t nodes = 0;
  const auto limits = effort.limits(options.nodes / kPartToAdapt, kTimeToAdapt);
  if (const auto plan = adaptedPlan(model, startPlan(model, options.start), limits, nodes)) {
    effort.spend(nodes);
    near.keep({*plan, valueOf(model, *plan)}, effort);
    near.raiseBounds(effort, BoundBy::DaysTogether);
    if (near.zonesAreMet()) return std::move(near).taken(effort);
  } else {
    effort.spend(nodes);
  }
  SearchedPlan anew = RotationSearch(model, options, effort).run();
  if (!near.isThere()) return anew;
  PlanValue mine = near.found().value;
  // Staying as it was goes before wishes and closeness: a hand on one day does not turn all others over.
  mine.wishes = anew.value.wishes;
  mine.objective = anew.value.objective;
  if (anew.grams && anew.value.isBetterThan(mine)) return anew;
  return std::move(near).taken(effort);
}

}  // namespace

SearchedPlan searchRotation(const RotationModel& model, const RotationOptions& options) {
  const RotationEffort effort(options);
  if (options.start.empty() || openCells(model) == 0) return RotationSearch(model, options, effort).run();
  return adapted(model, options, effort);
}

}  // namespace tarebowl::diet
