// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/nutrient.h"
#include "core/health/calcium_binding.h"
#include "core/health/calcium_dose.h"
#include "core/health/calcium_review.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::health {
namespace {

using quantity::Grams;

constexpr double kCaPerGramCarbonate = 400.436;  // mg: 40.078 / 100.086 of CaCO3

food::NutrientId nutrient(const char* tagname) {
  return food::findByTagname(tagname).value();
}

diet::DietFood food(std::string id, std::vector<std::pair<const char*, double>> per100g, double step = 1.0) {
  diet::DietFood made;
  made.id = made.name = std::move(id);
  made.scaleStep = Grams(step);
  for (const auto& [tagname, amount] : per100g)
    made.composition.set(nutrient(tagname), {.amount = quantity::AsFedContent(amount)});
  return made;
}

diet::DietFood crickets() {
  return food("crickets", {{"WATER", 69.0}, {"CA", 40.7}, {"P", 295.0}});
}
diet::DietFood carbonate(double step = 0.1) {
  return food("carbonate", {{"WATER", 0.0}, {"CA", 100.0 * kCaPerGramCarbonate}, {"P", 0.0}}, step);
}

/// 100 g of crickets an animal, Ca:P of 1.5 at least.
struct Crickets {
  diet::BalanceProblem problem;
  diet::Diet eaten{Grams(100.0), Grams(0.0)};
  explicit Crickets(double step = 0.1) {
    problem.foods = {crickets(), carbonate(step)};
    problem.ratios.push_back(
        {"ca-p", food::nutrients::calcium(), food::nutrients::phosphorus(), 1.5, {}, false, 1.0, {}});
  }
  void addCalcium(std::optional<double> min, std::optional<double> max) {
    problem.targets.push_back({max ? "calcium-limit" : "calcium",
                               food::nutrients::calcium(),
                               min,
                               max,
                               quantity::Unit::Milligram,
                               quantity::Basis::Day,
                               false,
                               1.0,
                               {}});
  }
};

// 100 g crickets, Ca 40.7 mg, P 295 mg, Ca:P 0.137966: (1.5 · 295 - 40.7) / 400.436 = 1.003407 g retained.
TEST(CalciumDose, dustsCrickets) {
  const Crickets made;
  const Dose dose = smallestDose(made.problem, made.eaten, {.supplement = 1});
  EXPECT_EQ(dose.answer, DoseAnswer::Found);
  EXPECT_NEAR(dose.exact.value(), 1.003407, 1e-6);
  EXPECT_DOUBLE_EQ(dose.grams.value(), 1.1);
  EXPECT_EQ(dose.most, std::nullopt);
}

TEST(CalciumDose, whatFallsOffIsPutOnBefore) {
  const Crickets made;
  EXPECT_NEAR(smallestDose(made.problem, made.eaten, {.supplement = 1, .retained = 0.5}).exact.value(),
              2.006814, 2e-6);
  EXPECT_NEAR(
      smallestDose(made.problem, made.eaten, {.supplement = 1, .retained = 0.5, .eaten = 0.8}).exact.value(),
      2.508517, 2e-6);
}

TEST(CalciumDose, isOfTheBowlThatAllShare) {
  Crickets made;
  made.problem.eater.count = 3;
  const Dose dose = smallestDose(made.problem, made.eaten, {.supplement = 1});
  EXPECT_NEAR(dose.exact.value(), 3 * 1.003407, 3e-6);
  EXPECT_DOUBLE_EQ(dose.grams.value(), 3.1);
  EXPECT_NEAR(withDose(made.problem, made.eaten, {.supplement = 1}, 3.0)[1].value(), 1.0, 1e-12);
}

TEST(CalciumDose, aWholeStepThatIsJustEnoughIsNotExceeded) {
  Crickets made;
  made.problem.ratios[0].min = (40.7 + 3 * 0.1 * kCaPerGramCarbonate) / 295.0;
  EXPECT_DOUBLE_EQ(smallestDose(made.problem, made.eaten, {.supplement = 1}).grams.value(), 0.3);
}

TEST(CalciumDose, holdsTheSafeUpperLimits) {
  Crickets made;
  // 1.1 g bring 40.7 + 440.5 = 481.2 mg.
  made.addCalcium({}, 480.0);
  const Dose dose = smallestDose(made.problem, made.eaten, {.supplement = 1});
  EXPECT_EQ(dose.answer, DoseAnswer::CrossesALimit);
  EXPECT_EQ(dose.crossed, std::vector<std::string>{"calcium-limit"});
  EXPECT_NEAR(dose.most.value(), (480.0 - 40.7) / kCaPerGramCarbonate, 1e-9);
  made.problem.targets[0].max = 482.0;
  EXPECT_EQ(smallestDose(made.problem, made.eaten, {.supplement = 1}).answer, DoseAnswer::Found);
}

TEST(CalciumDose, tellsWhatItWouldCrossIfNothingFellOff) {
  Crickets made;
  // At half retained 2.1 g are put on: 40.7 + 420.5 = 461.2 mg are eaten, of all of it 40.7 + 840.9 = 881.6.
  made.addCalcium({}, 600.0);
  const Dose dose = smallestDose(made.problem, made.eaten, {.supplement = 1, .retained = 0.5});
  EXPECT_EQ(dose.answer, DoseAnswer::Found);
  EXPECT_TRUE(dose.crossed.empty());
  EXPECT_EQ(dose.crossedIfAllEaten, std::vector<std::string>{"calcium-limit"});
  made.problem.targets[0].max = 882.0;
  EXPECT_TRUE(
      smallestDose(made.problem, made.eaten, {.supplement = 1, .retained = 0.5}).crossedIfAllEaten.empty());
}

TEST(CalciumDose, theHardestMinimumDecides) {
  Crickets made;
  made.addCalcium(600.0, {});
  EXPECT_NEAR(smallestDose(made.problem, made.eaten, {.supplement = 1}).exact.value(),
              (600.0 - 40.7) / kCaPerGramCarbonate, 1e-9);
}

TEST(CalciumDose, saysWhyThereIsNone) {
  Crickets made;
  made.problem.ratios[0].min = 0.1;
  EXPECT_EQ(smallestDose(made.problem, made.eaten, {.supplement = 1}).answer, DoseAnswer::NothingNeeded);
  made.problem.ratios[0].min = 1.5;
  EXPECT_EQ(smallestDose(made.problem, made.eaten, {.supplement = 0}).answer, DoseAnswer::NotByThisFood);
  made.problem.foods[1] = food("carbonate", {{"WATER", 0.0}});
  EXPECT_EQ(smallestDose(made.problem, made.eaten, {.supplement = 1}).answer, DoseAnswer::ContentUnknown);
  made.problem.ratios.clear();
  made.problem.foods[1] = carbonate();
  EXPECT_EQ(smallestDose(made.problem, made.eaten, {.supplement = 1}).answer, DoseAnswer::NoTarget);
}

// Spinach 970 mg oxalic acid and 99 mg Ca, kale 20 and 150.
TEST(Oxalate, bindsByMoles) {
  EXPECT_NEAR(oxalateRatio(970.0, 99.0), 4.361501, 1e-6);
  EXPECT_NEAR(oxalateRatio(20.0, 150.0), 0.059353, 1e-6);
}

TEST(Oxalate, bindsNoMoreThanTheFoodsOwnCalcium) {
  const std::vector<diet::DietFood> foods{food("spinach", {{"CA", 99.0}, {"OXALAC", 970.0}}),
                                          food("kale", {{"CA", 150.0}, {"OXALAC", 20.0}}),
                                          food("endive", {{"CA", 52.0}})};
  const std::vector<FoodGrams> eaten{{"spinach", 100.0}, {"kale", 100.0}, {"endive", 100.0}};
  const OxalateShare share = oxalateShare(foods, eaten);
  EXPECT_NEAR(share.couldBind.value(), (99.0 + 150.0 * 0.059353) / 249.0, 1e-6);
  EXPECT_NEAR(share.known, 249.0 / 301.0, 1e-12);
  EXPECT_EQ(oxalateShare(foods, {}).couldBind, std::nullopt);
}

TEST(Phytate, holdsSixPhosphorus) {
  const std::vector<diet::DietFood> foods{food("bran", {{"P", 300.0}, {"PHYTAC", 660.028572}})};
  // 1 mmol of phytic acid holds 6 · 30.973762 mg P.
  EXPECT_NEAR(phytateShare(foods, std::vector<FoodGrams>{{"bran", 100.0}}).ofPhosphorus.value(),
              185.842572 / 300.0, 1e-9);
}

quantity::Date day(int n) {
  return std::chrono::sys_days(std::chrono::year{2026} / 9 / 1) + std::chrono::days(n);
}

intake::EatenBowl bowl(int n, double offered, std::optional<double> eaten) {
  intake::EatenItem item;
  item.food = "crickets";
  item.offered = offered;
  if (eaten) item.eaten = intake::Uncertain(*eaten);
  item.atLeast = eaten.value_or(0.0);
  item.atMost = eaten.value_or(offered);
  intake::EatenBowl made;
  made.group = "dragons";
  made.day = day(n);
  made.items = {item};
  return made;
}

struct Review {
  std::vector<intake::EatenBowl> bowls;
  CalciumQuestion question;
  Review() {
    const Crickets made;
    question.problem = made.problem;
    question.problem.eater = {.name = "dragon", .count = 2, .bodyMass = quantity::Kilograms(0.4)};
    question.from = day(0);
    question.to = day(9);
  }
  CalciumReview run() {
    question.bowls = bowls;
    return reviewCalcium(question);
  }
};

TEST(CalciumReview, countsPerAnimalPerBodyAndPerDryMatter) {
  Review made;
  made.bowls = {bowl(0, 200.0, 100.0), bowl(1, 200.0, 200.0)};
  const CalciumReview review = made.run();
  EXPECT_EQ(review.daysOfPeriod, 10U);
  EXPECT_EQ(review.daysWithBowls, 2U);
  const Strand& calcium = review.strands[0];
  EXPECT_NEAR(calcium.offered.perDay.value(), 40.7, 1e-9);       // 100 g each
  EXPECT_NEAR(calcium.eaten.perDay.value(), 0.75 * 40.7, 1e-9);  // 50 g and 100 g
  EXPECT_NEAR(calcium.eaten.perKgBody.value(), 0.75 * 40.7 / 0.4, 1e-9);
  EXPECT_NEAR(calcium.eaten.perKgDryMatter.value(), 407.0 / 0.31, 1e-6);  // mg/kg as fed over 31 % dry matter
  EXPECT_NEAR(review.ratioEaten.value(), 40.7 / 295.0, 1e-12);
}

TEST(CalciumReview, aNutrientThatNobodyKnowsIsUnknownAndNotNothing) {
  Review made;
  made.bowls = {bowl(0, 200.0, 200.0)};
  const CalciumReview review = made.run();
  const Strand& magnesium = review.strands[2];  // of the crickets nobody stated it
  EXPECT_EQ(magnesium.eaten.perDay, std::nullopt);
  EXPECT_EQ(magnesium.offered.perDay, std::nullopt);
  EXPECT_EQ(magnesium.days[0].offered, std::nullopt);
  EXPECT_EQ(magnesium.coverage, 0.0);
}

TEST(CalciumReview, aDayWithoutALeftoverStaysMissing) {
  Review made;
  made.bowls = {bowl(0, 200.0, 200.0), bowl(1, 200.0, {}), bowl(4, 200.0, 200.0)};
  const CalciumReview review = made.run();
  EXPECT_EQ(review.completeDays, 2U);
  EXPECT_EQ(review.strands[0].known, 2U);
  EXPECT_EQ(review.strands[0].days[1].eaten, std::nullopt);
  EXPECT_NEAR(review.strands[0].days[1].atMost, 40.7, 1e-9);
  EXPECT_NEAR(review.strands[0].eaten.perDay.value(), 40.7, 1e-9);
}

TEST(CalciumReview, aRollingMeanNeedsFourKnownDays) {
  Review made;
  for (int n = 0; n < 10; ++n)
    if (n < 3 || n > 5) made.bowls.push_back(bowl(n, 200.0, 200.0));
  const CalciumReview review = made.run();
  EXPECT_EQ(review.strands[0].days[2].rolling, std::nullopt);
  EXPECT_NEAR(review.strands[0].days[3].rolling.value(), 40.7, 1e-9);  // day 6: days 0, 1, 2 and 6
  EXPECT_NEAR(review.ratio[3].rolling.value(), 40.7 / 295.0, 1e-12);
  EXPECT_NEAR(review.strands[0].days[4].rolling.value(), 40.7, 1e-9);  // day 7: days 1, 2, 6 and 7
}

TEST(CalciumReview, nothingRecordedIsUnknownAndNotZero) {
  Review made;
  const CalciumReview review = made.run();
  EXPECT_EQ(review.daysWithBowls, 0U);
  EXPECT_EQ(review.strands[0].eaten.perDay, std::nullopt);
  EXPECT_EQ(review.ratioEaten, std::nullopt);
  ASSERT_EQ(review.zones.size(), 1U);
  EXPECT_EQ(review.zones[0].eaten.state, diet::TargetState::Unknown);
  made.question.supplement = "carbonate";
  EXPECT_FALSE(made.run().advice);
}

TEST(CalciumReview, advisesADoseAndWhatALossOfDustWouldMakeOfIt) {
  Review made;
  made.bowls = {bowl(0, 200.0, 200.0)};
  made.question.supplement = "carbonate";
  made.question.supplementRetained = 0.5;
  const auto advice = made.run().advice;
  ASSERT_TRUE(advice);
  // Two animals, 100 g each, half of the dust stays on: 2 · 1.003407 / 0.5.
  EXPECT_NEAR(advice->dose.exact.value(), 4.013628, 4e-6);
  EXPECT_DOUBLE_EQ(advice->dose.grams.value(), 4.1);
  EXPECT_GE(advice->caPAfter.value(), 1.5);
  EXPECT_EQ(advice->after.at(0).eaten.state, diet::TargetState::Met);
  const auto quarter = std::ranges::find_if(
      advice->sensitivity, [](const DoseSensitivity& s) { return s.retained == 0.25 && s.eaten == 1.0; });
  ASSERT_NE(quarter, advice->sensitivity.end());
  EXPECT_NEAR(quarter->dose.exact.value(), 8.027256, 8e-6);
  // 4.1 g / 2 animals · 0.25 reach the mouth.
  EXPECT_NEAR(quarter->caPAtAnswer.value(), (40.7 + 0.5125 * kCaPerGramCarbonate) / 295.0, 1e-9);
}

TEST(CalciumReview, dustThatFellOffIsNotEaten) {
  Review made;
  made.bowls = {bowl(0, 200.0, 200.0)};
  intake::EatenItem dust;
  dust.food = "carbonate";
  dust.offered = 2.0;
  dust.eaten = intake::Uncertain(2.0);
  made.bowls[0].items.push_back(dust);
  made.question.retained["carbonate"] = 0.6;
  const CalciumReview review = made.run();
  EXPECT_NEAR(review.strands[0].eaten.perDay.value(), 40.7 + 0.6 * kCaPerGramCarbonate, 1e-9);
  EXPECT_NEAR(review.strands[0].offered.perDay.value(), 40.7 + kCaPerGramCarbonate, 1e-9);
}

}  // namespace
}  // namespace tarebowl::health
