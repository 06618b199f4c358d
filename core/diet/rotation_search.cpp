// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_search.h"

#include "core/diet/rotation_exact.h"
#include "core/diet/rotation_moves.h"
#include "core/diet/rotation_totals.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Clock = std::chrono::steady_clock;
using Eigen::Index;

constexpr double kClosed = 1e-9;
constexpr double kSpare = 1e-7;     // of a budget that a bound is asked within: rounding
constexpr Index kFewCells = 40;     // as many can be decided by branch and bound alone
constexpr Index kMostPlaces = 130;  // blocks times foods of a relaxation
constexpr double kTimeForFewCells = 0.4;
constexpr int kTriesToSpread = 200;
constexpr std::int64_t kNodesOfSums = 3000;

class RotationSearch {
 public:
  RotationSearch(const RotationModel& model, const RotationOptions& options)
      : model_(model),
        options_(options),
        start_(Clock::now()),
        deadline_(start_ + options.deadline),
        random_(options.seed) {}

  SearchedPlan run() {
    if (!firstBound()) return std::move(found_);
    firstPlan();
    if (found_.grams) updateBounds(false);
    if (!isEnough()) solveAsItIs();
    tryOthers();
    if (found_.grams && !isProven_) updateBounds(!isEnough());
    return std::move(found_);
  }

 private:
  [[nodiscard]] bool isOver() const {
    return Clock::now() >= deadline_ || options_.stop.stop_requested() || found_.nodes >= options_.nodes;
  }
  /// Of the nodes and of the time that is left, so much.
  [[nodiscard]] solver::Limits limits(std::int64_t nodes, double ofTime = 1.0) const {
    solver::Limits limits;
    limits.threads = 1;
    limits.nodes = std::max<std::int64_t>(1, std::min(nodes, options_.nodes - found_.nodes));
    const std::chrono::duration<double, std::milli> left = deadline_ - Clock::now();
    limits.deadline =
        std::chrono::milliseconds(std::max<std::int64_t>(1, std::llround(ofTime * left.count())));
    limits.stop = options_.stop;
    return limits;
  }

  /// Days alike together, where that stays a small program; else all together, which bounds less closely.
  [[nodiscard]] DayBlocks blocks() const {
    DayBlocks alike = alikeTogether(model_);
    const auto places = static_cast<Index>(alike.size()) * model_.foods;
    return places <= kMostPlaces ? alike : allTogether(model_);
  }

  /// Nothing is to be decided, or what the period wants; false where there is no plan at all.
  bool firstBound() {
    if (openCells(model_) == 0) {
      PlanMoves settled(model_, settledGrams());
      if (settled.value().broken <= kClosed) keep(settled);
      found_.isImpossible = !found_.grams;
      const PlanValue& value = found_.value;
      found_.bound = {value.period, value.daily, value.wishes, value.objective};
      return false;
    }
    const RotationBudgets none{0.0, 0.0, 0.0};
    const RotationBound period =
        relaxedBound(model_, alikeTogether(model_), RotationStage::Period, none, WithDailyZones::Yes);
    found_.isImpossible = period.isImpossible;
    if (period.isImpossible) return false;
    wanted_ = period.days.size() > 0 ? period.days : Eigen::VectorXd::Zero(model_.foods);
    const RotationBudgets least{std::max(0.0, period.value) * (1.0 + kSpare), 0.0, 0.0};
    if (model_.variety.empty() && model_.useUp.empty()) return wantAsIn(RotationStage::Objective, least);
    const RotationBound wishes =
        relaxedBound(model_, allTogether(model_), RotationStage::Wishes, least, WithDailyZones::No);
    return wantAsIn(RotationStage::Objective, {least[0], 0.0, std::max(0.0, wishes.value) * (1.0 + kSpare)});
  }
  bool wantAsIn(RotationStage stage, const RotationBudgets& budgets) {
    const RotationBound best = relaxedBound(model_, allTogether(model_), stage, budgets, WithDailyZones::No);
    if (best.days.size() > 0) wanted_ = best.days;
    return true;
  }
  [[nodiscard]] solver::RowMatrix settledGrams() const {
    solver::RowMatrix plan = solver::RowMatrix::Zero(model_.days, model_.foods);
    for (Index d = 0; d < model_.days; ++d)
      for (Index j = 0; j < model_.foods; ++j) plan(d, j) = model_.cell(d, j).least;
    return plan;
  }

  void firstPlan() {
    for (int attempt = 0; attempt < kTriesToSpread && !found_.grams && !isOver(); ++attempt) {
      const double disorder = attempt == 0 ? 0.0 : 0.05 * attempt;
      if (const auto pattern = spreadOverDays(model_, wanted_, disorder, random_)) tryPattern(*pattern);
    }
  }

  /// A pattern's sums in any amounts say what it is good for; only where that is more than there is are they
  /// solved on the scale and laid out.
  void tryPattern(const FedPattern& pattern) {
    const RotationModel restricted = restrictedTo(model_, pattern);
    const auto promise = bestTotals(restricted, Amounts::Any, limits(kNodesOfSums));
    if (!promise) return;
    if (found_.grams && !promises(pattern, *promise)) return;
    const auto totals = bestTotals(restricted, Amounts::OnScale, limits(kNodesOfSums));
    if (!totals) return;
    found_.nodes += totals->nodes;
    PlanMoves moves(model_, laidOut(restricted, *totals));
    moves.shiftBetweenDays();
    if (moves.value().broken > kClosed || moves.value().daily > kClosed) moves.improve(options_.stop);
    if (moves.value().broken <= kClosed) keep(moves);
  }

  [[nodiscard]] bool promises(const FedPattern& pattern, const Totals& sums) const {
    PlanValue best = found_.value;
    PlanValue promised{.period = sums.period, .wishes = 0.0, .objective = sums.objective};
    const solver::RowMatrix fed = pattern.cast<double>();
    promised.wishes = model_.useUp.empty() ? wishesMissed(model_, fed) : 0.0;
    return promised.isBetterThan(best);
  }

  void keep(PlanMoves& moves) {
    if (!found_.grams) found_.firstPlan = Clock::now() - start_;
    if (found_.grams && !moves.value().isBetterThan(found_.value)) return;
    found_.grams = moves.grams();
    found_.value = moves.value();
    best_ = found_.grams->array() > 0.0;
  }

  /// Until so many in a row have bettered nothing.
  void tryOthers() {
    int idle = 0;
    for (int round = 0; idle < options_.rounds && !isEnough() && !isOver(); ++round) {
      const bool hadPlan = found_.grams.has_value();
      const PlanValue before = found_.value;
      tryAnother(round);
      const bool isBetter = hadPlan ? found_.value.isBetterThan(before) : found_.grams.has_value();
      idle = isBetter ? 0 : idle + 1;
    }
  }

  void tryAnother(int round) {
    if (!found_.grams || round % 4 == 3) {
      const double disorder = 0.2 + 0.1 * (round % 10);
      if (const auto pattern = spreadOverDays(model_, wanted_, disorder, random_)) tryPattern(*pattern);
      return;
    }
    tryPattern(changed(best_, 1 + round % 3));
  }

  /// The best pattern with some foods in other foods' places.
  [[nodiscard]] FedPattern changed(FedPattern pattern, int changes) {
    const auto pick = [&](Index count) {
      return static_cast<Index>(random_() % static_cast<std::uint64_t>(count));
    };
    for (int tries = 0; changes > 0 && tries < 400; ++tries) {
      const Index day = pick(model_.days);
      const Index out = pick(model_.foods);
      const Index in = pick(model_.foods);
      if (!model_.isOpen[static_cast<std::size_t>(day)] || !pattern(day, out) || pattern(day, in)) continue;
      if (model_.cell(day, out).must) continue;
      FedPattern other = pattern;
      other(day, out) = false;
      if (!canAdd(model_, other, day, in)) continue;
      other(day, in) = true;
      if (!keepsRules(model_, other)) continue;
      pattern = other;
      --changes;
    }
    return pattern;
  }

  /// Few cells: every question by branch and bound over the days as they are.
  void solveAsItIs() {
    if (openCells(model_) > kFewCells || isOver()) return;
    const ExactPlan exact = exactPlan(model_, limits(options_.nodes / 8, kTimeForFewCells));
    found_.nodes += exact.nodes;
    if (exact.isImpossible && !found_.grams) found_.isImpossible = true;
    if (!exact.grams) return;
    PlanMoves moves(model_, *exact.grams);
    if (moves.value().broken > kClosed) return;
    keep(moves);
    if (!exact.isComplete) return;
    found_.bound = exact.bound;
    isProven_ = true;
  }

  /// What no plan betters that is as good as the best in the questions before.
  void updateBounds(bool thoroughly) {
    const PlanValue& value = found_.value;
    const std::array reached{value.period, value.daily, value.wishes, value.objective};
    RotationBudgets budgets{0.0, 0.0, 0.0};
    for (const RotationStage stage : kRotationStages) {
      const auto i = static_cast<std::size_t>(stage);
      const double floor = stage < RotationStage::Objective || model_.isDistance ? 0.0 : -solver::kInfinity;
      double& bound = found_.bound[i];
      bound = floor;
      if (reached[i] > floor + kClosed) {
        const RotationBound relaxed = relaxedBound(model_, blocks(), stage, budgets, WithDailyZones::Yes);
        bound = std::max(bound, relaxed.value);
        if (thoroughly && reached[i] - bound > kClosed && !isOver()) raiseByWholeSteps(stage, budgets, bound);
      }
      // A bound above what was reached would be no bound: beyond rounding, nothing is claimed.
      bound = bound <= reached[i] + kSpare * std::max(1.0, std::abs(reached[i])) ? std::min(bound, reached[i])
                                                                                 : floor;
      if (stage < RotationStage::Objective) budgets[i] = reached[i] * (1.0 + kSpare);
    }
  }
  void raiseByWholeSteps(RotationStage stage, const RotationBudgets& budgets, double& bound) {
    const RotationBound whole =
        wholeBound(model_, allTogether(model_), stage, budgets, limits(options_.nodes / 8), found_.nodes);
    bound = std::max(bound, whole.value);
  }

  [[nodiscard]] bool isEnough() const {
    if (!found_.grams) return false;
    if (isProven_) return true;
    const PlanValue& value = found_.value;
    const std::array reached{value.period, value.daily, value.wishes, value.objective};
    for (std::size_t i = 0; i < reached.size(); ++i)
      if (reached[i] - found_.bound[i] > std::max(kClosed, options_.enoughGap * std::abs(reached[i])))
        return false;
    return true;
  }

  const RotationModel& model_;
  const RotationOptions& options_;
  Clock::time_point start_;
  Clock::time_point deadline_;
  std::mt19937_64 random_;
  Eigen::VectorXd wanted_;
  FedPattern best_;
  bool isProven_ = false;
  SearchedPlan found_;
};

}  // namespace

SearchedPlan searchRotation(const RotationModel& model, const RotationOptions& options) {
  return RotationSearch(model, options).run();
}

}  // namespace tarebowl::diet
