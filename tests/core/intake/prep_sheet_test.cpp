// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/prep_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::intake {
namespace {

using diet::DietLine;
using diet::Purpose;
using quantity::Grams;
using testing::ElementsAre;
using testing::IsEmpty;

quantity::Date day(const char* iso) {
  return quantity::parseDate(iso).value();
}

KitchenFood foodOf(const std::string& code) {
  KitchenFood food{.code = code, .name = code, .form = "raw", .group = "vegetable"};
  if (code == "carrot-boiled") {
    food.form = "boiled";
    food.raw = "carrot-raw";
    food.yield = 0.9;
    food.rawEdibleFraction = 0.8;
  }
  if (code == "potato-boiled") food.raw = "potato-raw";  // nobody measured its yield
  if (code == "chick") food.form = "thawed";
  if (code == "crickets") food.form = "live";
  if (code == "limestone") food.step = Grams(0.1);
  return food;
}

DietOfDay evening(std::vector<DietLine> lines) {
  DietOfDay made{.diet = {.code = "evening", .name = "evening bowl", .group = "foxes"}};
  made.version.number = 2;
  made.version.lines = std::move(lines);
  made.version.fedFrom = day("2026-11-20");
  return made;
}

GroupOfDay foxes(std::vector<DietOfDay> diets) {
  return {.code = "foxes",
          .name = "Fennec foxes",
          .section = "Small Mammals",
          .animals = 3,
          .diets = std::move(diets)};
}

std::vector<PrepBowl> bowls(const GroupOfDay& group, const char* iso = "2026-11-25") {
  return bowlsOf(group, day(iso), foodOf);
}

TEST(PrepSheet, ABowlHoldsTheGramsOfOneAnimalTimesThoseWhoShareIt) {
  const auto made = bowls(foxes({evening({{.food = "chick", .amount = Grams(40), .preparation = "whole"},
                                          {.food = "limestone", .amount = Grams(0.3)},
                                          {.food = "kale", .amount = Grams(0)}})}));
  ASSERT_EQ(made.size(), 1U);
  EXPECT_EQ(made[0].bowl.key, (BowlKey{"foxes", day("2026-11-25"), 1}));
  EXPECT_EQ(made[0].bowl.diet, "evening");
  EXPECT_EQ(made[0].bowl.version, 2);
  EXPECT_EQ(made[0].bowl.animals, 3);
  ASSERT_EQ(made[0].bowl.items.size(), 2U);              // of kale nothing is given
  EXPECT_EQ(made[0].bowl.items[0].planned, Grams(120));  // 3 * 40 g
  EXPECT_EQ(made[0].bowl.items[0].preparation, "whole");
  EXPECT_NEAR(made[0].total().value(), 120.9, 1e-9);  // 120 g + 3 * 0.3 g
}

TEST(PrepSheet, EveryMealAndPurposeHasABowlWithALabelOfItsOwn) {
  const auto made = bowls(foxes({evening(
      {{.food = "chick", .amount = Grams(40), .meal = "evening"},
       {.food = "kale", .amount = Grams(10), .meal = "morning"},
       {.food = "carrot-boiled", .amount = Grams(5), .meal = "evening"},
       {.food = "crickets", .amount = Grams(2), .purpose = Purpose::Enrichment, .meal = "evening"}})}));
  std::vector<std::string> labels;
  for (const PrepBowl& bowl : made) labels.push_back(bowl.bowl.label);
  EXPECT_THAT(labels, ElementsAre("Fennec foxes, evening", "Fennec foxes, morning",
                                  "Fennec foxes, evening (enrichment)"));
  EXPECT_EQ(made[0].bowl.items.size(), 2U);
  EXPECT_EQ(made[2].purpose, "enrichment");
}

Bowl labelled(const std::string& label, const std::string& diet = "lemur-morning") {
  return {.key = {"family", {}, 1}, .meal = "morning", .label = label, .diet = diet};
}

TEST(PrepSheet, ABowlIsKnownByDietMealAndPurposeWhereItsGroupHasAnotherName) {
  const std::vector there{labelled("Lemurs, morning (treat)"), labelled("Lemurs, morning")};
  const std::vector renamed{labelled("Ring-tailed lemurs, morning"),
                            labelled("Ring-tailed lemurs, morning (treat)"),
                            labelled("Ring-tailed lemurs, morning (browse)")};
  EXPECT_EQ(sameBowls(renamed, there), (std::vector<std::optional<std::size_t>>{1, 0, std::nullopt}));
}

TEST(PrepSheet, ABowlWithItsOwnLabelGoesBeforeOneOfAnotherLabel) {
  const std::vector there{labelled("A"), labelled("B")};
  const std::vector asked{labelled("C"), labelled("A")};
  EXPECT_EQ(sameBowls(asked, there), (std::vector<std::optional<std::size_t>>{1, 0}));
  const std::vector byHand{labelled("C", "")};  // no diet says what it is
  EXPECT_EQ(sameBowls(byHand, std::vector{labelled("A", "")}),
            (std::vector<std::optional<std::size_t>>{std::nullopt}));
}

TEST(PrepSheet, TwoDietsOfAGroupAreToldApart) {
  DietOfDay other = evening({{.food = "kale", .amount = Grams(5)}});
  other.diet.name = "scatter";
  const auto made = bowls(foxes({evening({{.food = "chick", .amount = Grams(40)}}), other}));
  ASSERT_EQ(made.size(), 2U);
  EXPECT_EQ(made[1].bowl.label, "Fennec foxes, scatter");
  EXPECT_EQ(made[1].bowl.key.bowl, 2);
}

TEST(PrepSheet, WhileADietIsPhasedInTheOldOneIsStillInTheBowl) {
  DietOfDay next = evening({{.food = "kale", .amount = Grams(40), .meal = "evening"}});
  next.version.phaseInDays = 4;
  next.linesBefore = {{.food = "kale", .amount = Grams(20), .meal = "evening"},
                      {.food = "chick", .amount = Grams(30), .meal = "evening"}};
  const auto grams = [&](const char* iso) {
    std::vector<double> amounts;
    for (const auto& line : linesOn(next, day(iso), foodOf).lines) amounts.push_back(line.amount.value());
    return amounts;
  };
  EXPECT_THAT(grams("2026-11-20"),
              ElementsAre(25, 23));  // 3/4 of 20 + 1/4 of 40; 3/4 of 30 = 22.5, on whole grams
  EXPECT_THAT(grams("2026-11-21"), ElementsAre(30, 15));
  EXPECT_THAT(grams("2026-11-23"), ElementsAre(40, 0));
  EXPECT_THAT(grams("2026-11-24"), ElementsAre(40));
  EXPECT_EQ(linesOn(next, day("2026-11-21"), foodOf).phaseDay, 2);
  EXPECT_EQ(linesOn(next, day("2026-11-24"), foodOf).phaseDay, 0);
}

TEST(PrepSheet, ThePlanOfARotationForTheDayGoesBeforeTheVersion) {
  DietOfDay rotated = evening({{.food = "kale", .amount = Grams(40)}});
  rotated.dayPlan = {{.food = "endive", .amount = Grams(38)}};
  const auto made = bowls(foxes({rotated}));
  ASSERT_EQ(made.size(), 1U);
  EXPECT_EQ(made[0].bowl.items.at(0).food, "endive");
}

TEST(PrepSheet, WithoutANumberOfAnimalsThereIsNoBowl) {
  GroupOfDay group = foxes({evening({{.food = "kale", .amount = Grams(40)}})});
  group.animals.reset();
  EXPECT_THAT(bowls(group), IsEmpty());
  group.animals = 0;
  EXPECT_THAT(bowls(group), IsEmpty());
}

TEST(PrepSheet, AllowancesStandBesideTheFirstBowlOfTheirDiet) {
  DietOfDay diet = evening({{.food = "kale", .amount = Grams(40)}});
  diet.version.allowances = {{.food = "crickets", .low = Grams(0.5), .high = Grams(1.5)}};
  EXPECT_EQ(bowls(foxes({diet})).at(0).allowances.size(), 1U);
}

TEST(KitchenTotal, AddsUpAFoodOverAllBowlsAndWorksBackToTheRawAndTheBought) {
  const auto made = bowls(foxes(
      {evening({{.food = "carrot-boiled", .amount = Grams(6), .meal = "morning", .preparation = "mashed"},
                {.food = "carrot-boiled", .amount = Grams(9), .meal = "evening", .preparation = "diced"},
                {.food = "potato-boiled", .amount = Grams(2), .meal = "evening"}})}));
  const auto totals = totalsOf(made, foodOf);
  ASSERT_EQ(totals.size(), 2U);
  EXPECT_EQ(totals[0].food.code, "carrot-boiled");
  EXPECT_EQ(totals[0].amount, Grams(45));  // 3 * (6 + 9)
  EXPECT_EQ(totals[0].bowls, 2U);
  EXPECT_EQ(totals[0].preparations, "mashed; diced");
  EXPECT_NEAR(totals[0].raw->value(), 50, 1e-9);       // 45 g / 0.9
  EXPECT_NEAR(totals[0].bought->value(), 62.5, 1e-9);  // 50 g / 0.8
  EXPECT_EQ(totals[1].raw, std::nullopt);              // unknown is not the same weight
}

TEST(KitchenTotal, DoesNotCountWhatWasSwappedOut) {
  auto made = bowls(foxes({evening({{.food = "kale", .amount = Grams(6)}})}));
  made[0].bowl.items[0].swappedOut = true;
  EXPECT_THAT(totalsOf(made, foodOf), IsEmpty());
  EXPECT_EQ(made[0].total(), Grams(0));
}

TEST(PrepSheet, KnowsWhatIsThawedAheadAndWhatIsAlive) {
  EXPECT_TRUE(isThawed(foodOf("chick")));
  EXPECT_TRUE(isThawed({.form = "frozen-thawed"}));
  EXPECT_FALSE(isThawed({.form = "freeze-dried"}));
  EXPECT_TRUE(isLive(foodOf("crickets")));
  EXPECT_FALSE(isLive(foodOf("kale")));
}

}  // namespace
}  // namespace tarebowl::intake
