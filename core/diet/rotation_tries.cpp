// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_tries.h"

#include "core/diet/rotation_day_after_day.h"
#include "core/diet/rotation_moves.h"
#include "core/diet/rotation_rework.h"
#include "core/diet/rotation_totals.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <utility>

namespace tarebowl::diet {
namespace {

constexpr double kClosed = 1e-9;
constexpr std::int64_t kNodesOfSums = 3000;
constexpr std::int64_t kNodesOfDay = 1000;
constexpr std::int64_t kNodesOfDays = 400;  // more of them: each node takes longer
constexpr double kTimeInTurn = 0.7;         // of what is left
constexpr std::int64_t kNodesInTurn = 60;   // beside all days to come

bool promises(const RotationModel& model, const FedPattern& pattern, const Totals& sums,
              const PlanValue& best) {
  PlanValue promised{.period = sums.period, .wishes = 0.0, .objective = sums.objective};
  const solver::RowMatrix fed = pattern.cast<double>();
  promised.wishes = model.useUp.empty() ? wishesMissed(model, fed) : 0.0;
  return promised.isBetterThan(best);
}

Tried triedPattern(const RotationModel& model, const FedPattern& pattern, const SearchedPlan& best,
                   const RotationEffort& effort) {
  Tried tried;
  const RotationModel restricted = restrictedTo(model, pattern);
  const auto promise = bestTotals(restricted, Amounts::Any, effort.limits(kNodesOfSums));
  if (!promise || (best.grams && !promises(model, pattern, *promise, best.value))) return tried;
  tried.hasPromised = true;
  const auto totals = bestTotals(restricted, Amounts::OnScale, effort.limits(kNodesOfSums));
  if (!totals) return tried;
  tried.nodes = totals->nodes;
  PlanMoves moves(model, laidOut(restricted, *totals));
  moves.shiftBetweenDays();
  if (moves.value().broken > kClosed || moves.value().daily > kClosed) moves.improve(effort.stop());
  if (moves.value().broken <= kClosed) tried.plan = ValuedPlan{moves.grams(), moves.value()};
  return tried;
}

Tried triedDays(const RotationModel& model, const DaysAnew& anew, const SearchedPlan& best,
                const RotationEffort& effort) {
  Tried tried;
  if (!best.grams) return tried;
  const auto limits = effort.limits(anew.times * (anew.days.size() > 1 ? kNodesOfDays : kNodesOfDay));
  const auto grams = reworked(model, *best.grams, wholeDays(model, anew.days), limits, tried.nodes);
  if (!grams) return tried;
  ValuedPlan plan{*grams, valueOf(model, *grams)};
  if (plan.value.broken <= kClosed) tried.plan = std::move(plan);
  return tried;
}

Tried triedInTurn(const RotationModel& model, const DaysInTurn& turn, const SearchedPlan& best,
                  const RotationEffort& effort) {
  Tried tried;
  if (!best.grams) return tried;
  const auto daily = static_cast<std::size_t>(RotationStage::Daily);
  const RotationBudgets budgets{best.value.period, std::max(0.0, best.bound[daily]), best.value.wishes};
  const auto grams =
      dayAfterDay(model, turn.order, budgets, effort.limits(kNodesInTurn, kTimeInTurn), tried.nodes);
  if (!grams) return tried;
  ValuedPlan plan{*grams, valueOf(model, *grams)};
  if (plan.value.broken <= kClosed) tried.plan = std::move(plan);
  return tried;
}

}  // namespace

Tried tried(const RotationModel& model, const RotationTry& what, const SearchedPlan& best,
            const RotationEffort& effort) {
  if (const auto* pattern = std::get_if<FedPattern>(&what))
    return triedPattern(model, *pattern, best, effort);
  if (const auto* turn = std::get_if<DaysInTurn>(&what)) return triedInTurn(model, *turn, best, effort);
  return triedDays(model, std::get<DaysAnew>(what), best, effort);
}

std::vector<Tried> triedTogether(const RotationModel& model, std::span<const RotationTry> tries,
                                 const SearchedPlan& best, const RotationEffort& effort,
                                 const std::function<void()>& beside) {
  std::vector<Tried> all(tries.size());
  const std::size_t before = beside ? 1 : 0;
  std::vector<std::exception_ptr> failed(before + tries.size());
  const auto one = [&](std::size_t i) {
    try {
      if (i < before)
        beside();
      else
        all[i - before] = tried(model, tries[i - before], best, effort);
    } catch (...) {
      failed[i] = std::current_exception();
    }
  };
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t i = next++; i < failed.size(); i = next++) one(i);
  };
  {
    std::jthread other;
    if (failed.size() > 1) other = std::jthread(work);
    work();
  }
  for (const std::exception_ptr& why : failed)
    if (why) std::rethrow_exception(why);
  return all;
}

}  // namespace tarebowl::diet
