// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_search.h"

#include "core/diet/rotation_adapt.h"
#include "core/diet/rotation_day_bound.h"
#include "core/diet/rotation_exact.h"
#include "core/diet/rotation_moves.h"
#include "core/diet/rotation_rework.h"
#include "core/diet/rotation_totals.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>
#include <span>

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
constexpr std::int64_t kNodesOfDay = 1000;
constexpr std::int64_t kNodesOfPair = 400;
constexpr int kIdleRounds = 12;  // before bounds are raised

class RotationSearch {
 public:
  RotationSearch(const RotationModel& model, const RotationOptions& options)
      : model_(model),
        options_(options),
        start_(Clock::now()),
        deadline_(start_ + options.deadline),
        random_(options.seed) {
    for (std::size_t i = 0; i < found_.bound.size(); ++i) found_.bound[i] = floorOf(i);
  }

  /// From a plan that was there before.
  SearchedPlan adapt() {
    if (openCells(model_) == 0) return run();
    if (const auto plan = adaptedPlan(model_, startPlan(), limits(options_.nodes / 4, 0.5), found_.nodes)) {
      PlanMoves moves(model_, *plan);
      keep(moves);
      updateBounds(false);
      if (nothingIsShort({found_.value.period, found_.value.daily})) return std::move(found_);
    }
    RotationSearch anew(model_, options_);
    anew.deadline_ = deadline_;
    SearchedPlan other = anew.run();
    if (!found_.grams) return other;
    PlanValue mine = found_.value;
    // Staying as it was goes before wishes and closeness: a hand on one day does not turn all others over.
    mine.wishes = other.value.wishes;
    mine.objective = other.value.objective;
    if (!other.grams || !other.value.isBetterThan(mine)) return std::move(found_);
    return other;
  }

  SearchedPlan run() {
    if (!firstBound()) return std::move(found_);
    firstPlan();
    if (found_.grams) updateBounds(false);
    if (!isEnough()) solveAsItIs();
    if (!nothingIsShort()) reworkDays();
    tryOthers();
    if (found_.grams && !isEnough()) updateBounds(true);
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
    forgetBounds();
    best_ = found_.grams->array() > 0.0;
  }

  /// Below this nothing comes in any case.
  [[nodiscard]] double floorOf(std::size_t question) const {
    const bool isShortfall = question < static_cast<std::size_t>(RotationStage::Objective);
    return isShortfall || model_.isDistance ? 0.0 : -solver::kInfinity;
  }
  /// Bounds hold within what may be missed in the questions before: where that has become more, they are
  /// asked anew.
  void forgetBounds() {
    const std::array missed{found_.value.period, found_.value.daily, found_.value.wishes};
    for (std::size_t i = 0; i < missed.size(); ++i)
      if (missed[i] > boundsAreWithin_[i] + kClosed)
        for (std::size_t later = i + 1; later < found_.bound.size(); ++later)
          found_.bound[later] = floorOf(later);
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
      // Perhaps there is none that is better; else days are planned anew beside patterns.
      if (found_.grams && !isThorough_ && (idle == kIdleRounds || round == 2 * kIdleRounds)) {
        updateBounds(true);
        isThorough_ = true;
      }
    }
  }

  void tryAnother(int round) {
    if (!found_.grams || round % 4 == 3) {
      const double disorder = 0.2 + 0.1 * (round % 10);
      if (const auto pattern = spreadOverDays(model_, wanted_, disorder, random_)) tryPattern(*pattern);
      return;
    }
    if (round % 4 == 2 && isThorough_) return reworkAnother(round / 4);
    tryPattern(changed(best_, 1 + round % 3));
  }

  /// The best pattern with some foods in other foods' places.
  [[nodiscard]] FedPattern changed(FedPattern pattern, int changes) {
    for (int tries = 0; changes > 0 && tries < 400; ++tries) {
      const Index day = drawn(model_.days);
      const Index out = drawn(model_.foods);
      const Index in = drawn(model_.foods);
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

  /// Each day by itself, foods and grams at once, while that makes the plan better.
  void reworkDays() {
    bool helped = found_.grams.has_value();
    while (helped) {
      helped = false;
      for (Index d = 0; d < model_.days; ++d) helped |= reworkSome(std::array{d});
    }
  }
  bool reworkSome(std::span<const Index> days) {
    if (!found_.grams || isEnough() || isOver()) return false;
    const auto grams = reworked(model_, *found_.grams, days,
                                limits(days.size() > 1 ? kNodesOfPair : kNodesOfDay), found_.nodes);
    if (!grams) return false;
    const PlanValue before = found_.value;
    PlanMoves moves(model_, *grams);
    if (moves.value().broken <= kClosed) keep(moves);
    return found_.value.isBetterThan(before);
  }
  /// Now a day, now two.
  void reworkAnother(int turn) {
    const Index one = drawn(model_.days);
    const Index other = drawn(model_.days);
    if (one == other || turn % 2 == 0)
      reworkSome(std::array{one});
    else
      reworkSome(std::array{one, other});
  }
  [[nodiscard]] Index drawn(Index count) {
    return static_cast<Index>(random_() % static_cast<std::uint64_t>(count));
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
    if (!found_.grams) return;
    const PlanValue& value = found_.value;
    const std::array reached{value.period, value.daily, value.wishes, value.objective};
    boundsAreWithin_ = {value.period, value.daily, value.wishes};
    RotationBudgets budgets{0.0, 0.0, 0.0};
    for (const RotationStage stage : kRotationStages) {
      const auto i = static_cast<std::size_t>(stage);
      const double floor = floorOf(i);
      double& bound = found_.bound[i];
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
    if (stage != RotationStage::Objective || isOver()) return;
    const double reached = found_.value.objective;
    const double enough = reached - options_.enoughGap * std::abs(reached);
    if (bound < enough)
      bound = std::max(bound,
                       dayByDayBound(model_, budgets, enough, limits(options_.nodes / 8, 0.5), found_.nodes));
  }

  [[nodiscard]] solver::RowMatrix startPlan() const {
    solver::RowMatrix plan(model_.days, model_.foods);
    for (Index d = 0; d < model_.days; ++d)
      for (Index j = 0; j < model_.foods; ++j)
        plan(d, j) = options_.start[static_cast<std::size_t>(d)][static_cast<std::size_t>(j)].value();
    return plan;
  }

  /// Beyond what no plan betters.
  [[nodiscard]] bool nothingIsShort() const {
    const PlanValue& value = found_.value;
    return nothingIsShort({value.period, value.daily, value.wishes});
  }

  /// Whether the first questions reach what is proved that no plan can better.
  [[nodiscard]] bool nothingIsShort(std::initializer_list<double> reached) const {
    if (!found_.grams) return false;
    std::size_t i = 0;
    for (const double value : reached)
      if (value - found_.bound[i++] > std::max(kClosed, kSpare * std::abs(value))) return false;
    return true;
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
  RotationBudgets boundsAreWithin_{0.0, 0.0, 0.0};
  bool isThorough_ = false;  ///< bounds were raised, and days are planned anew beside patterns
  SearchedPlan found_;
};

}  // namespace

SearchedPlan searchRotation(const RotationModel& model, const RotationOptions& options) {
  RotationSearch search(model, options);
  return options.start.empty() ? search.run() : search.adapt();
}

}  // namespace tarebowl::diet
