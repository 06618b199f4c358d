// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/kitchen_day.h"

#include "core/store/animal_verbs.h"
#include "core/store/feeding_reading.h"
#include "core/store/swap_verbs.h"
#include "core/transfer/day_overview.h"
#include "tests/core/transfer/brackenmere.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

using intake::PrepBowl;
using intake::PrepSheet;
using quantity::Grams;

constexpr const char* kMammals = "Small Mammals";

class KitchenDay : public testing::Test {
 protected:
  OwnSample sample;
  store::Collection& collection = sample.collection;

  PrepSheet sheet(quantity::Date day = kSampleDay) { return readPrepSheet(collection, kMammals, day); }
  static const PrepBowl& bowlOf(const PrepSheet& sheet, const std::string& group) {
    return *std::ranges::find(sheet.bowls, group, [](const PrepBowl& b) { return b.bowl.key.group; });
  }
  JudgedBy by() { return {store::toleranceRule(collection), kitchenFoods(collection)}; }
};

TEST_F(KitchenDay, TheSampleHasTwoSections) {
  EXPECT_EQ(sectionsOf(collection), (std::vector<std::string>{"Reptiles and Bats", kMammals}));
}

TEST_F(KitchenDay, BowlsComeFromTheDietsInForceForAsManyAsShareThem) {
  const PrepSheet today = sheet();
  const PrepBowl& foxes = bowlOf(today, "fennecs");
  EXPECT_EQ(foxes.bowl.diet, "fennec-evening");
  EXPECT_EQ(foxes.bowl.version, 2);
  EXPECT_EQ(foxes.bowl.animals, 3);
  EXPECT_EQ(foxes.bowl.items.at(0).planned, Grams(120));  // 3 * 40 g
  EXPECT_EQ(foxes.allowances.at(0).food, "mealworms");
  EXPECT_FALSE(foxes.opened);
  ASSERT_EQ(today.withoutBowl.size(), 1U);
  EXPECT_EQ(today.withoutBowl[0].group, "streaked-tenrecs");
  EXPECT_TRUE(today.invented);
}

TEST_F(KitchenDay, ADietThatIsPhasedInIsMixedWithTheOneBefore) {
  // Version 2 of the foxes' diet is fed from 2026-10-05 over 7 days; crickets, 3 g, are no longer in it.
  const PrepSheet first = sheet(quantity::parseDate("2026-10-05").value());
  EXPECT_EQ(bowlOf(first, "fennecs").phaseDay, 1);
  const auto crickets = std::ranges::find_if(first.bowls, [](const PrepBowl& bowl) {
    return bowl.bowl.key.group == "fennecs" && bowl.purpose == "enrichment";
  });
  ASSERT_NE(crickets, first.bowls.end());
  // 6/7 of 3 g is 2.57 g, on a scale of 0.1 g 2.6 g, for three
  EXPECT_NEAR(crickets->bowl.items.at(0).planned.value(), 7.8, 1e-9);
  const PrepSheet after = sheet(quantity::parseDate("2026-10-12").value());
  EXPECT_EQ(bowlOf(after, "fennecs").phaseDay, 0);
}

TEST_F(KitchenDay, WhatIsThawedAndFedAheadIsThatOfTomorrow) {
  const PrepSheet last = sheet(quantity::parseDate("2026-08-09").value());  // foxes are fed from the 10th
  ASSERT_FALSE(last.thawForTomorrow.empty());
  EXPECT_EQ(last.thawForTomorrow[0].food.code, "chick-day-old");
  EXPECT_EQ(last.thawForTomorrow[0].amount, Grams(120));
  EXPECT_TRUE(
      std::ranges::none_of(last.bowls, [](const PrepBowl& b) { return b.bowl.key.group == "fennecs"; }));
  EXPECT_TRUE(std::ranges::any_of(sheet().gutLoadForTomorrow,
                                  [](const auto& total) { return total.food.code == "crickets-adult"; }));
}

TEST_F(KitchenDay, AnOpenedSheetStaysAsItIsWhateverTheDietsSayLater) {
  openDay(collection, sheet(), store::kKeeper);
  const store::WeightRead weight{{{"fennecs", kSampleDay, 1}, 1}, Grams(119)};
  store::weighIn(collection, {&weight, 1}, store::kKeeper);
  const store::StoredGroup foxes = store::findGroup(collection, "fennecs").value();
  const PrepSheet again = sheet();
  EXPECT_TRUE(std::ranges::all_of(again.bowls, &PrepBowl::opened));
  EXPECT_EQ(again.bowls.size(), sheet().bowls.size());
  EXPECT_EQ(bowlOf(again, "fennecs").bowl.items.at(0).weighings.at(0).actual, Grams(119));
  EXPECT_EQ(openDay(collection, again, store::kKeeper).added, 0U);
}

TEST_F(KitchenDay, AGroupThatIsRenamedKeepsTheBowlsThatWereOpened) {
  openDay(collection, sheet(), store::kKeeper);
  const PrepSheet before = sheet();
  store::StoredGroup foxes = store::findGroup(collection, "fennecs").value();
  foxes.record.name = "Desert foxes";
  store::editGroup(collection, foxes.id, foxes.revision, foxes.record, store::kKeeper);
  const PrepSheet after = sheet();
  ASSERT_EQ(after.bowls.size(), before.bowls.size());
  EXPECT_TRUE(std::ranges::all_of(after.bowls, &PrepBowl::opened));
  EXPECT_EQ(bowlOf(after, "fennecs").groupName, "Desert foxes");
  EXPECT_EQ(bowlOf(after, "fennecs").bowl.label, bowlOf(before, "fennecs").bowl.label);  // it is stuck on
  EXPECT_EQ(openDay(collection, after, store::kKeeper).added, 0U);
}

TEST_F(KitchenDay, AnotherMachineThatOpensTheDayByTheOldNameAddsNothing) {
  const PrepSheet seenThere = sheet();
  store::StoredGroup foxes = store::findGroup(collection, "fennecs").value();
  foxes.record.name = "Desert foxes";
  store::editGroup(collection, foxes.id, foxes.revision, foxes.record, store::kKeeper);
  openDay(collection, sheet(), store::kKeeper);
  const std::size_t bowls = sheet().bowls.size();
  EXPECT_EQ(openDay(collection, seenThere, store::kKeeper).added, 0U);
  EXPECT_EQ(sheet().bowls.size(), bowls);
}

TEST_F(KitchenDay, AWeightIsJudgedByItsBowlAndByWhatThoseWeighWhoShareIt) {
  const PrepSheet today = sheet();
  const PrepBowl& tenrecs = bowlOf(today, "tenrecs");
  ASSERT_TRUE(tenrecs.bodyMass);
  const intake::BowlItem& food = tenrecs.bowl.items.at(0);
  const Grams tolerance = toleranceIn(tenrecs, food.food, by());
  const double step = kitchenFoods(collection)(food.food).step.value();
  const double least =
      std::min({2 * step, 0.02 * tenrecs.total().value(), 3 * 3 * tenrecs.bodyMass->value()});
  EXPECT_DOUBLE_EQ(tolerance.value(), std::max(0.5 * step, least));  // three animals, 0.3 % of a kg is 3 g
  EXPECT_EQ(doubtsIn(tenrecs, food, 10 * food.planned, "2026-11-25T07:30:00Z", by()),
            std::vector{intake::WeighingDoubt::TenTimes});
  EXPECT_TRUE(doubtsIn(tenrecs, food, food.planned, "2026-11-25T07:30:00Z", by()).empty());
}

TEST_F(KitchenDay, TheOverviewCountsWhatIsStillToBeDone) {
  const auto mammals = [&](quantity::Date day) {
    const DayOverview overview = readDayOverview(collection, day);
    return *std::ranges::find(overview.sections, kMammals, &SectionToday::section);
  };
  const SectionToday before = mammals(kSampleDay);
  EXPECT_EQ(before.weighed, 0U);
  EXPECT_GT(before.lines, before.bowls);
  EXPECT_EQ(before.groupsWithoutBowl, 1U);
  openDay(collection, sheet(), store::kKeeper);
  const store::WeightRead weight{{{"fennecs", kSampleDay, 1}, 1}, Grams(119)};
  store::weighIn(collection, {&weight, 1}, store::kKeeper);
  EXPECT_EQ(mammals(kSampleDay).weighed, 1U);
  const quantity::Date tomorrow = quantity::parseDate("2026-11-26").value();
  EXPECT_EQ(mammals(tomorrow).leftoversMissing, 1U);
  store::noteRemainder(collection, {"fennecs", kSampleDay, 1}, Grams(20), store::kKeeper);
  EXPECT_EQ(mammals(tomorrow).leftoversMissing, 0U);
}

TEST_F(KitchenDay, TheOverviewNamesSwapsAndWhatWaitsForADecision) {
  openDay(collection, sheet(), store::kKeeper);
  store::addSwap(collection,
                 {.instead = {{"fennecs", kSampleDay, 1}, 3},
                  .given = {{"beetroot-raw", Grams(24)}},
                  .why = "not delivered",
                  .approval = intake::SwapApproval::Waiting},
                 store::kKeeper);
  const DayOverview overview = readDayOverview(collection, kSampleDay);
  EXPECT_EQ(overview.swapsMade.size(), 1U);
  EXPECT_EQ(overview.swapsWaiting.size(), 1U);
  EXPECT_EQ(overview.dietsWaiting.size(), 2U);  // the lemurs' second version and the young dragons' first
}

TEST_F(KitchenDay, TheOverviewListsPansThatStillStandButNoneOfADayToCome) {
  const auto put = [&](const char* iso) {
    store::addControlPan(
        collection,
        {.place = kMammals, .day = quantity::parseDate(iso).value(), .foodClass = "root", .start = Grams(50)},
        store::kKeeper);
  };
  for (const char* iso : {"2026-11-25", "2026-11-23", "2026-11-26"}) put(iso);
  const DayOverview overview = readDayOverview(collection, kSampleDay);
  ASSERT_EQ(overview.pansThatStand.size(), 2U);
  EXPECT_EQ(quantity::isoDate(overview.pansThatStand[0].record.day), "2026-11-23");
}

}  // namespace
}  // namespace tarebowl::transfer
