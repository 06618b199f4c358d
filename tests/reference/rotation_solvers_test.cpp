// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Rotations of foods of the Indian Food Composition Tables 2017: small ones must be as good as the optimum
// that CBC proves of the same mixed-integer program, written day by day and apart from the program's
// own, and no bound may lie above it; on large ones nothing that is said of what no plan betters may lie
// above a plan, and Clp's relaxation of the days must agree with it.
#include "core/diet/rotation_bounds.h"
#include "core/diet/rotation_broken_rules.h"
#include "core/diet/rotation_day_after_day.h"
#include "core/diet/rotation_day_bound.h"
#include "core/diet/rotation_model.h"
#include "tests/reference/ifct_rotations.h"
#include "tests/reference/other_solvers.h"
#include "tests/reference/reference_data.h"
#include "tests/reference/rotation_reading.h"

#include <gtest/gtest.h>

#include <array>

namespace tarebowl::reference {
namespace {

constexpr double kAgreement = 1e-6;  // relative: what CBC keeps to

diet::RotationPlan planOf(const diet::RotationProblem& problem, std::uint64_t seed = 1, int rounds = 60,
                          double enoughGap = 0.0) {
  diet::RotationOptions options;
  options.deadline = std::chrono::hours(1);
  options.seed = seed;
  options.rounds = rounds;
  options.nodes = 2'000'000;
  options.enoughGap = enoughGap;
  return diet::rotate(problem, options);
}

class RotationsOfTheIndianTables : public testing::Test {
 protected:
  void SetUp() override {
    const auto table = ifctFile();
    if (!table) GTEST_SKIP() << ifctMissingNote();
    foods = readIfctFoods(*table);
  }
  std::vector<diet::DietFood> foods;
};

/// Portions of two to eleven steps, so that an optimum is proven in moments.
RandomRotation small(std::uint64_t seed) {
  RandomRotation wanted{.seed = seed, .days = 3, .lists = 2, .listed = 2, .chosen = 1, .others = 1};
  wanted.targets = 4;
  wanted.leastLimit = 5;
  wanted.limitSpread = 7;
  wanted.minEach = 2.0;
  wanted.largestStep = 2.0;
  return wanted;
}

struct Bounds {
  double relaxed = 0.0;
  double dayByDay = 0.0;
};
solver::RowMatrix gramsOf(const diet::RotationPlan& plan) {
  const auto days = static_cast<Eigen::Index>(plan.days.size());
  solver::RowMatrix grams(days, static_cast<Eigen::Index>(plan.days.front().size()));
  for (Eigen::Index d = 0; d < grams.rows(); ++d)
    for (Eigen::Index j = 0; j < grams.cols(); ++j)
      grams(d, j) = plan.days[static_cast<std::size_t>(d)][static_cast<std::size_t>(j)].value();
  return grams;
}

/// What is said to be the least cost: days taken together, and day by day. It is asked for more than there
/// is.
Bounds boundsOf(const diet::RotationProblem& problem, const diet::RotationPlan& plan, double optimum) {
  const diet::RotationModel model = diet::buildModel(problem).model;
  solver::Limits limits;
  limits.deadline = std::chrono::hours(1);
  limits.nodes = 1'000'000;
  std::int64_t nodes = 0;
  return {diet::relaxedBound(model, diet::allTogether(model), diet::RotationStage::Objective, {0.0, 0.0, 0.0},
                             diet::WithDailyZones::Yes)
              .value,
          diet::DayByDayBound(model, {0.0, 0.0, 0.0})
              .raise(gramsOf(plan), {.enough = 1.1 * optimum}, limits, nodes)};
}

/// One food is in almost every day that can be fed, and may not come more than two days running: days that
/// are planned each by itself, or foods spread evenly, leave days that miss their zones.
TEST_F(RotationsOfTheIndianTables, AWeekOfDaysThatAreHardToFeedIsPlannedOneDayAfterAnother) {
  const diet::RotationModel model = diet::buildModel(randomRotation(foods, {.seed = 6})).model;
  constexpr std::array<Eigen::Index, 7> kOrder{0, 1, 2, 3, 4, 5, 6};
  solver::Limits limits;
  limits.deadline = std::chrono::hours(1);
  limits.nodes = 60;
  limits.threads = 1;
  std::int64_t nodes = 0;
  const auto week = diet::dayAfterDay(model, kOrder, {0.0, 0.0, 0.0}, limits, nodes);
  ASSERT_TRUE(week.has_value());
  EXPECT_TRUE(diet::keepsRules(model, week->array() > 0.0));
  const diet::PlanValue value = diet::valueOf(model, *week);
  EXPECT_LE(value.broken, 1e-9);
  EXPECT_LE(value.period, 1e-9);
  EXPECT_LE(value.daily, 1e-9);
}

TEST_F(RotationsOfTheIndianTables, DaysThatAreHardToFeedRaiseTheBoundBeyondAllDaysTogether) {
  const diet::RotationModel model = diet::buildModel(randomRotation(foods, {.seed = 6})).model;
  const double together = diet::relaxedBound(model, diet::allTogether(model), diet::RotationStage::Objective,
                                             {0.0, 0.0, 0.0}, diet::WithDailyZones::Yes)
                              .value;
  solver::Limits limits;
  limits.deadline = std::chrono::hours(1);
  limits.nodes = 1'000'000;
  const solver::RowMatrix nothing = solver::RowMatrix::Zero(model.days, model.foods);
  std::int64_t nodes = 0;
  diet::DayByDayBound bound(model, {0.0, 0.0, 0.0});
  EXPECT_GT(bound.raise(nothing, {.moves = 100}, limits, nodes), 1.1 * together);
  EXPECT_FALSE(bound.isAtEnd());
  static_cast<void>(bound.raise(nothing, {.known = 2.0 * together, .moves = 100}, limits, nodes));
  EXPECT_TRUE(bound.isAtEnd()) << "no prices say more than what is known";
}

TEST_F(RotationsOfTheIndianTables, AWeekIsPlannedWithinOnePercentOfItsBound) {
  diet::RotationOptions options;
  options.deadline = std::chrono::hours(1);
  options.nodes = 50'000;
  options.enoughGap = 0.01;
  const diet::RotationPlan plan = diet::rotate(randomRotation(foods, {.seed = 8}), options);
  EXPECT_EQ(plan.status, diet::RotationStatus::Balanced);
  EXPECT_LE(plan.objective.gap(), 0.01);
}

TEST_F(RotationsOfTheIndianTables, TheCheapestSmallOnesAreThoseOfCbc) {
  int compared = 0;
  int raised = 0;
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    SCOPED_TRACE(seed);
    const diet::RotationProblem problem = randomRotation(foods, small(seed));
    const diet::RotationPlan plan = planOf(problem);
    const auto cbc = solveWholeByCbc(readRotation(problem, Asked::Cheapest), 120.0);
    if (!cbc) {  // no plan in which every zone holds, or not proven in time
      EXPECT_NE(plan.status, diet::RotationStatus::Balanced);
      continue;
    }
    ++compared;
    ASSERT_EQ(plan.status, diet::RotationStatus::Balanced) << plan.reason;
    EXPECT_NEAR(plan.objective.value, cbc->value, kAgreement * cbc->value);
    EXPECT_LE(plan.objective.bound, cbc->value * (1.0 + kAgreement));
    const Bounds bounds = boundsOf(problem, plan, cbc->value);
    EXPECT_LE(bounds.dayByDay, cbc->value * (1.0 + kAgreement));
    EXPECT_GE(bounds.dayByDay, bounds.relaxed - kAgreement * cbc->value);
    raised += bounds.dayByDay > bounds.relaxed + 1e-4 * cbc->value ? 1 : 0;
  }
  EXPECT_GE(compared, 4);
  EXPECT_GE(raised, 2) << "day by day it must say more than of all days together, or nothing was tried";
}

TEST_F(RotationsOfTheIndianTables, TheLeastShortfallOfSmallOnesIsThatOfCbc) {
  int missed = 0;
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    SCOPED_TRACE(seed);
    RandomRotation wanted = small(seed);
    wanted.displaced = 0.4;  // more of them, and an assertion in CBC's own heuristics fails
    const diet::RotationProblem problem = randomRotation(foods, wanted);
    const auto cbc = solveWholeByCbc(readRotation(problem, Asked::LeastPeriodShortfall), 120.0);
    ASSERT_TRUE(cbc);
    const diet::RotationPlan plan = planOf(problem);
    EXPECT_NEAR(plan.period.value, cbc->value, kAgreement);
    missed += cbc->value > 0.01 ? 1 : 0;
  }
  EXPECT_GE(missed, 2);
}

TEST_F(RotationsOfTheIndianTables, OnLargeOnesTheBoundIsThatOfClpAndNoPlanLiesBelowIt) {
  for (std::uint64_t seed = 1; seed <= 3; ++seed) {
    SCOPED_TRACE(seed);
    RandomRotation wanted{.seed = seed};
    diet::RotationProblem problem = randomRotation(foods, wanted);
    problem.rules.frequency.clear();  // with runs the days apart are a little tighter than taken together
    const auto clp = Clp(readRotation(problem, Asked::Cheapest)).solveClosely();
    ASSERT_TRUE(clp);
    const diet::RotationModel model = diet::buildModel(problem).model;
    const diet::RotationBound relaxed =
        diet::relaxedBound(model, diet::alikeTogether(model), diet::RotationStage::Objective, {0.0, 0.0, 0.0},
                           diet::WithDailyZones::Yes);
    EXPECT_NEAR(relaxed.value, clp->value, kAgreement * clp->value);
    const diet::RotationPlan plan = planOf(problem, 1, 40, 0.02);
    const diet::RotationPlan other = planOf(problem, 2, 40, 0.02);
    EXPECT_GE(plan.objective.bound, clp->value * (1.0 - kAgreement));
    for (const double value : {plan.objective.value, other.objective.value}) {
      EXPECT_GE(value, plan.objective.bound * (1.0 - kAgreement));
      EXPECT_GE(value, other.objective.bound * (1.0 - kAgreement));
    }
    EXPECT_LT(plan.objective.gap(), 0.03);
  }
}

}  // namespace
}  // namespace tarebowl::reference
