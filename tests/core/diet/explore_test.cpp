// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/explore.h"

#include "core/diet/objective.h"
#include "tests/core/diet/bowls.h"
#include "tests/core/diet/random_problem.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace tarebowl::diet {
namespace {

using namespace testing;  // the bowls
using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

/// Calcium costs 4 per 2000 mg of greens, of which there are 200 g (400 mg), and 20 per 400 mg of insects.
BalanceProblem cheapCalcium() {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.foods[0].costPerKg = 4.0;
  problem.foods[0].max = Grams(200);
  problem.foods[1].costPerKg = 20.0;
  problem.objective.kind = Objective::Kind::LowestCost;
  problem.targets = {target("CA", {.min = 300}, Unit::Milligram, Basis::Day)};
  return problem;
}

std::vector<double> breakpointsOf(const Trace& trace) {
  std::vector<double> places;
  for (const TracePoint& point : trace.points)
    if (point.isBreakpoint) places.push_back(point.at);
  return places;
}

/// Of the span: how well a breakpoint is placed by halving.
constexpr double kPlace = 1e-8;
const TracedBound kFirstMin{TracedBound::Of::Rule, 0, BoundSide::Min};
const TracedBound kFirstMax{TracedBound::Of::Rule, 0, BoundSide::Max};
const TracedBound kGreensMax{TracedBound::Of::Food, 0, BoundSide::Max};

// 2 mg a gram of greens until their 200 g are used up at 400 mg; then 0.4 mg a gram of insects.
TEST(Explore, ATargetTakesTheCheapFoodFirstAndThenTheDearOne) {
  const Trace trace = explore(cheapCalcium(), kFirstMin, 200, 600);
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  ASSERT_EQ(trace.points.size(), 3U) << "two straight pieces";
  EXPECT_NEAR(trace.points[0].grams[0].value(), 100.0, 1e-6);
  EXPECT_TRUE(trace.points[1].isBreakpoint);
  EXPECT_NEAR(trace.points[1].at, 400.0, kPlace * 400);
  EXPECT_NEAR(trace.points[1].objective, 0.8, 1e-7);  // 200 g at 4 per kg
  EXPECT_NEAR(trace.points[2].grams[1].value(), 500.0, 1e-6);
  EXPECT_NEAR(trace.points[2].objective, 10.8, 1e-7);  // and 500 g at 20 per kg
  EXPECT_NEAR(readAt(trace, 500).value().objective, 5.8, 1e-7);
  EXPECT_FALSE(trace.ofAnyAmounts);
}

// 300 mg: 150 g of greens where there are so many, else 5 g of insects for every gram that lacks.
TEST(Explore, AFoodThatMayNotBeGivenHasToBeMadeUpFor) {
  const Trace trace = explore(cheapCalcium(), kGreensMax, 0, 300);
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  EXPECT_THAT(breakpointsOf(trace), ::testing::ElementsAre(::testing::DoubleNear(150.0, 1e-9)));
  EXPECT_NEAR(trace.points.front().grams[1].value(), 750.0, 1e-7);
  EXPECT_NEAR(readAt(trace, 100).value().grams[1].value(), 250.0, 1e-7);
  EXPECT_NEAR(trace.points.back().grams[0].value(), 150.0, 1e-7) << "more may be given and is not needed";
}

TEST(Explore, SaysWhereTheHardRulesBeginToContradictEachOther) {
  BalanceProblem problem = cheapCalcium();
  problem.targets[0].hard = true;
  problem.foods[1].max = Grams(0);
  const Trace limit = explore(problem, kGreensMax, 0, 300);
  ASSERT_EQ(limit.status, Trace::Status::Traced) << limit.reason;
  EXPECT_TRUE(limit.endsLow);
  EXPECT_FALSE(limit.endsHigh);
  EXPECT_NEAR(limit.points.front().at, 150.0, 1e-7);
  const Trace target = explore(problem, kFirstMin, 100, 800);
  EXPECT_FALSE(target.endsLow);
  EXPECT_TRUE(target.endsHigh);
  EXPECT_NEAR(target.points.back().at, 400.0, 1e-6);
  EXPECT_EQ(explore(problem, kFirstMin, 500, 800).status, Trace::Status::Impossible);
}

TEST(Explore, SaysWhichTargetGivesWay) {
  BalanceProblem problem = cheapCalcium();
  problem.foods[1].max = Grams(0);
  problem.targets.push_back(target("P", {.max = 75}, Unit::Milligram, Basis::Day));
  problem.targets[1].hard = true;  // 50 mg per 100 g: at most 150 g of greens, 300 mg of calcium
  const Trace trace = explore(problem, kFirstMin, 200, 400);
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  EXPECT_THAT(breakpointsOf(trace), ::testing::Contains(::testing::DoubleNear(300.0, 1e-6)));
  EXPECT_EQ(readAt(trace, 250).value().shortfall, 0.0);
  EXPECT_NEAR(trace.points.back().shortfalls[0], 0.25, 1e-8);  // 300 of 400
  EXPECT_EQ(trace.points.back().shortfalls[1], 0.0);
}

// Closest to 100 g of greens and 50 g of insects, at least `m` g of calcium per kg of dry matter:
// (2 - 0.1 m) greens + (0.4 - 0.4 m) insects >= 0 in mg and g. At 20 g/kg no insect is left.
TEST(Explore, ABoundPerDryMatterBendsTheAnswer) {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.reference = grams({100, 50});
  problem.targets = {target("CA", {.min = 10}, Unit::Gram, Basis::DryMatter)};
  problem.targets[0].hard = true;
  const Trace trace = explore(problem, kFirstMin, 5, 19);
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  EXPECT_GT(trace.points.size(), 10U);
  // 220 mg in 30 g of dry matter: from 7.33 g/kg on something has to give.
  EXPECT_THAT(breakpointsOf(trace), ::testing::ElementsAre(::testing::DoubleNear(22.0 / 3.0, 1e-7)));
  for (double m = 8; m < 19; m += 0.37) {
    // Least ((g - 100)/100)^2 + ((i - 50)/50)^2 on a g + b i = 0: one line through the bowl, weighted.
    const double a = 2.0 - 0.1 * m;
    const double b = 0.4 - 0.4 * m;
    const double excess = a * 100 + b * 50;
    const double size = a * a * 1e4 + b * b * 2500;
    const double greens = 100 - excess * a * 1e4 / size;
    const double insects = 50 - excess * b * 2500 / size;
    const TracePoint point = readAt(trace, m).value();
    EXPECT_NEAR(point.grams[0].value(), greens, 0.15) << m;  // 1/1000 of what is drawn
    EXPECT_NEAR(point.grams[1].value(), insects, 0.15) << m;
    const TracePoint& drawn = *pointNear(trace, m);
    const double atDrawn = 2.0 - 0.1 * drawn.at;
    EXPECT_NEAR(atDrawn * drawn.grams[0].value() + (0.4 - 0.4 * drawn.at) * drawn.grams[1].value(), 0.0,
                1e-6);
  }
}

TEST(Explore, SaysThatTheScalesStepsAreLeftAside) {
  BalanceProblem problem = cheapCalcium();
  problem.wholeSteps = true;
  EXPECT_TRUE(explore(problem, kFirstMin, 200, 600).ofAnyAmounts);
}

TEST(Explore, KeepsTheChoicesOfTheBowl) {
  BalanceProblem problem = cheapCalcium();
  problem.choices = {{.group = "leafy vegetable", .atLeast = 0, .atMost = 0, .minEach = Grams(0)}};
  TraceOptions options;
  options.bowl = grams({0, 750});
  const Trace trace = explore(problem, kFirstMin, 200, 600, options);
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  EXPECT_EQ(readAt(trace, 300).value().grams[0], Grams(0));
}

TEST(Explore, RefusesWhatHasNoBoundOrNoRange) {
  EXPECT_EQ(explore(cheapCalcium(), kFirstMax, 1, 2).reason, "no-such-bound");
  EXPECT_EQ(explore(cheapCalcium(), kFirstMin, 2, 2).reason, "no-such-range");
  EXPECT_EQ(explore(cheapCalcium(), {TracedBound::Of::Food, 7, BoundSide::Max}, 1, 2).reason, "no-such-food");
}

TEST(Explore, StopsWhenItIsAskedTo) {
  std::stop_source stop;
  stop.request_stop();
  TraceOptions options;
  options.stop = stop.get_token();
  EXPECT_EQ(explore(cheapCalcium(), kFirstMin, 200, 600, options).status, Trace::Status::Stopped);
}

BalanceProblem withBound(BalanceProblem problem, const TracedBound& moved, double bound) {
  if (moved.of == TracedBound::Of::Food) {
    DietFood& food = problem.foods[moved.index];
    if (moved.side == BoundSide::Min) food.min = Grams(bound);
    if (moved.side == BoundSide::Max) food.max = Grams(bound);
    return problem;
  }
  const auto set = [&](auto& rule) { (moved.side == BoundSide::Min ? rule.min : rule.max) = bound; };
  const std::size_t targets = problem.targets.size();
  const std::size_t ratios = problem.ratios.size();
  if (moved.index < targets)
    set(problem.targets[moved.index]);
  else if (moved.index < targets + ratios)
    set(problem.ratios[moved.index - targets]);
  else
    set(problem.shares[moved.index - targets - ratios]);
  return problem;
}

/// The solver may spend 1e-6 of the shortfall and 1e-9 on what is sought, and the trace spends nothing: what
/// is sought may then be a little better, never worse.
void expectAnswerOf(const BalanceProblem& problem, const TracePoint& point, double near) {
  const DietSolution solution = solve(problem);
  RC_ASSERT(solution.status == DietStatus::Balanced || solution.status == DietStatus::Compromise);
  RC_ASSERT(std::abs(solution.shortfall - point.shortfall) <= 2e-6 * (1.0 + point.shortfall) + near);
}

RC_GTEST_PROP(ExploreProperty, EveryPointAndWhatLiesBetweenIsTheAnswerOfItsBound, ()) {
  BalanceProblem problem = drawSensibleProblem();
  problem.wholeSteps = false;
  problem.confidence.reset();
  problem.choices.clear();
  problem.reference = referenceDiet(problem);
  const std::size_t rules = problem.targets.size() + problem.ratios.size() + problem.shares.size();
  TracedBound moved;
  moved.of = *rc::gen::element(TracedBound::Of::Rule, TracedBound::Of::Food);
  moved.side = *rc::gen::element(BoundSide::Min, BoundSide::Max);
  const bool isRule = moved.of == TracedBound::Of::Rule;
  RC_PRE(!isRule || rules > 0);
  moved.index = *rc::gen::inRange<std::size_t>(0, isRule ? rules : problem.foods.size());
  const auto now = boundNow(problem, moved);
  RC_PRE(!isRule || (now && *now > 0.0));
  const TraceRange range =
      isRule ? TraceRange{0.6 * *now, 1.4 * *now} : rangeWorthTracing(problem, moved, *problem.reference);
  const Trace trace = explore(problem, moved, range.from, range.to);
  if (trace.status == Trace::Status::Impossible || trace.status == Trace::Status::Unbounded) return;
  if (trace.reason == "no-such-bound") return;  // a soft rule of no weight asks for nothing
  RC_LOG() << trace.reason;
  for (int k = 0; k <= 16 && trace.status != Trace::Status::Traced; ++k) {
    // What the solver refuses at one of its places nobody can trace.
    const double at = range.from + (range.to - range.from) * k / 16.0;
    const DietSolution there = solve(withBound(problem, moved, at));
    if (there.status == DietStatus::Failed || there.status == DietStatus::Unbounded) RC_DISCARD("no answer");
  }
  RC_ASSERT(trace.status == Trace::Status::Traced);
  RC_ASSERT(!trace.points.empty());
  for (std::size_t k = 0; k < trace.points.size(); k += 3)
    if (!trace.points[k].isBreakpoint)
      expectAnswerOf(withBound(problem, moved, trace.points[k].at), trace.points[k], 1e-8);
  for (int k = 1; k < 8; ++k) {
    const double at = trace.points.front().at + k / 8.0 * (trace.points.back().at - trace.points.front().at);
    const bool atBreak = std::ranges::any_of(trace.points, [&](const TracePoint& point) {
      return point.isBreakpoint && std::abs(point.at - at) <= 1e-6 * (range.to - range.from);
    });
    if (atBreak) continue;  // the answer may jump there
    double most = 0.0;
    for (const TracePoint& point : trace.points) most = std::max(most, point.shortfall);
    expectAnswerOf(withBound(problem, moved, at), readAt(trace, at).value(), 2e-3 * most + 1e-8);
  }
}

/// 80 kcal from greens (4 per kg, a cent a kcal) or insects (10 per kg, half a cent): from 200 g greens at
/// 0.8 to 40 g insects at 0.4. Half way, and everywhere between, t of the way: cost 0.8 - 0.4 t, distance t^2
/// of the greens and (40 t / 10)^2 of the insects, whose unit is 5 % of 200 g: 17 t^2.
BalanceProblem energyForMoney() {
  BalanceProblem problem = greensAndInsects();
  problem.wholeSteps = false;
  problem.foods[0].costPerKg = 4.0;
  problem.foods[1].costPerKg = 10.0;
  problem.reference = grams({200, 0});
  problem.targets = {target("ENERC", {.min = 80, .max = 80}, Unit::Kilocalorie, Basis::Day)};
  problem.targets[0].hard = true;
  return problem;
}

TEST(TradeOff, ShowsWhatEachCentAwayFromTheDietOfNowSaves) {
  const Trace trace = tradeOff(energyForMoney(), {Objective::Kind::LowestCost, {}});
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  EXPECT_NEAR(trace.points.front().at, 0.4, 1e-8);
  EXPECT_NEAR(trace.points.back().at, 0.8, 1e-8);
  EXPECT_GT(trace.points.size(), 5U) << "a parabola is no straight line";
  for (const TracePoint& point : trace.points) {
    const double t = (0.8 - point.at) / 0.4;
    EXPECT_NEAR(point.objective, 17.0 * t * t, 1e-6);
    EXPECT_NEAR(point.grams[1].value(), 40.0 * t, 1e-6);
  }
}

TEST(TradeOff, ReadsTheOtherWayRoundToo) {
  BalanceProblem problem = energyForMoney();
  problem.objective.kind = Objective::Kind::LowestCost;
  const Trace trace = tradeOff(problem, {Objective::Kind::Closest, {}});
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  EXPECT_NEAR(trace.points.front().at, 0.0, 1e-6);
  EXPECT_NEAR(trace.points.front().objective, 0.8, 1e-6);
  EXPECT_NEAR(trace.points.back().at, 17.0, 1e-5);
  EXPECT_NEAR(trace.points.back().objective, 0.4, 1e-6);
}

// Phosphorus: 50 mg per 40 kcal of greens, 300 mg per 200 kcal of insects: 100 mg at 0.8, 120 mg at 0.4.
TEST(TradeOff, MostOfANutrientAgainstItsCost) {
  BalanceProblem problem = energyForMoney();
  problem.objective.kind = Objective::Kind::LowestCost;
  const Trace trace = tradeOff(problem, {Objective::Kind::Highest, nutrient("CA")});
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  // Calcium: 400 mg in 200 g greens at 0.8, 16 mg in 40 g insects at 0.4, and a straight line.
  ASSERT_EQ(trace.points.size(), 2U);
  EXPECT_NEAR(trace.points.front().at, 16.0, 1e-6);
  EXPECT_NEAR(trace.points.front().objective, 0.4, 1e-8);
  EXPECT_NEAR(trace.points.back().at, 400.0, 1e-6);
  EXPECT_NEAR(trace.points.back().objective, 0.8, 1e-8);
}

TEST(TradeOff, IsAPointWhereTheBestOfOneIsTheBestOfTheOther) {
  BalanceProblem problem = energyForMoney();
  problem.objective.kind = Objective::Kind::LowestCost;
  const Trace trace = tradeOff(problem, {Objective::Kind::Lowest, nutrient("CA")});
  ASSERT_EQ(trace.status, Trace::Status::Traced) << trace.reason;
  for (const TracePoint& point : trace.points) {
    EXPECT_NEAR(point.at, 16.0, 1e-5);
    EXPECT_NEAR(point.objective, 0.4, 1e-7);
  }
}

TEST(TradeOff, SaysWhichFoodHasNoPriceWhereMoneyIsTraded) {
  BalanceProblem problem = energyForMoney();
  problem.foods.back().costPerKg.reset();
  const Trace trace = tradeOff(problem, {Objective::Kind::LowestCost, {}});
  EXPECT_EQ(trace.status, Trace::Status::Failed);
  EXPECT_EQ(trace.reason, "no-price: " + problem.foods.back().id);
  EXPECT_TRUE(trace.points.empty());
}

TEST(TradeOff, SaysWhereNothingIsTraded) {
  EXPECT_EQ(tradeOff(energyForMoney(), {Objective::Kind::Closest, {}}).reason, "nothing-to-trade");
}

}  // namespace
}  // namespace tarebowl::diet
