// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_verbs.h"

#include "core/store/change_log.h"
#include "core/store/opening.h"
#include "tests/core/store/feeding_days.h"
#include "tests/core/store/larder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace tarebowl::store {
namespace {

using intake::entryThatCounts;
using intake::LeftoverKind;
using quantity::Grams;
using testing::HasSubstr;

const Author kOther{"Keeper B", "2026-11-25T07:41:09Z"};

class FeedingVerbs : public testing::Test {
 protected:
  Kitchen kitchen;
  Collection& collection = kitchen.collection;
};

TEST_F(FeedingVerbs, ASheetIsReadAsItWasOpened) {
  const auto bowls = bowlsOfDay(collection, kitchen.today, "Small Mammals");
  EXPECT_EQ(bowls, kitchen.planned());
  EXPECT_TRUE(bowlsOfDay(collection, kitchen.today, "Reptiles").empty());
  EXPECT_TRUE(bowlsOfDay(collection, day("2026-11-24")).empty());
}

TEST_F(FeedingVerbs, ASheetComesGroupByGroupByTheirCodesWithEachBowlsOwnEntries) {
  addGroup(collection, lemurGroup("aye"), kKeeper);  // the last, and the first by its code
  const std::vector<intake::Bowl> late{
      {.key = {"aye", kitchen.today, 1},
       .label = "Aye",
       .items = {{.food = "kale", .planned = Grams(5)}, {.item = 2, .food = "endive", .planned = Grams(6)}}}};
  openSheet(collection, "Small Mammals", kitchen.today, late, kKeeper);
  kitchen.weigh(kitchen.item("pair", 1), 400);
  correctWeight(collection, {kitchen.item("pair", 1), Grams(40)}, "typed 400 for 40", kOther);
  const auto bowls = bowlsOfDay(collection, kitchen.today, "Small Mammals");
  ASSERT_EQ(bowls.size(), 3U);
  EXPECT_EQ(bowls[0], late[0]);
  EXPECT_EQ(bowls[1], kitchen.planned()[0]);
  EXPECT_EQ(bowls[2].key.group, "pair");
  EXPECT_EQ(entryThatCounts(bowls[2].items.at(0).weighings)->actual, Grams(40));
  EXPECT_EQ(bowlsOfDay(collection, kitchen.today), bowls);
}

TEST_F(FeedingVerbs, OfABowlItIsKnownWhichMealAndDietItWas) {
  const auto given = bowlsGiven(collection, "family", day("2026-11-24"), kitchen.today);
  ASSERT_EQ(given.size(), 1U);
  EXPECT_EQ(given[0].day, kitchen.today);
  EXPECT_EQ(given[0].meal, "morning");
  EXPECT_EQ(given[0].diet, "lemur-morning");
  EXPECT_EQ(given[0].version, 1);
  const auto reward = bowlsGiven(collection, "pair", kitchen.today, kitchen.today);
  ASSERT_EQ(reward.size(), 1U);
  EXPECT_EQ(reward[0].diet, "");
  EXPECT_EQ(reward[0].version, 0);
  EXPECT_TRUE(bowlsGiven(collection, "nobody", kitchen.today, kitchen.today).empty());
}

TEST_F(FeedingVerbs, AWeightKeepsWhoAndWhenToTheSecond) {
  EXPECT_EQ(kitchen.weigh(kitchen.item("family", 2), 30.4, kOther), Kept::First);
  const intake::Bowl bowl = kitchen.bowl("family");
  const std::vector<intake::Weighing> expected{
      {.actual = Grams(30.4), .by = {"Keeper B", "2026-11-25T07:41:09Z"}}};
  EXPECT_EQ(bowl.items.at(1).weighings, expected);
  EXPECT_TRUE(bowl.items.at(0).weighings.empty());
}

TEST_F(FeedingVerbs, ACorrectionKeepsTheFirstEntryAndSaysWhy) {
  const auto kale = kitchen.item("family", 1);
  kitchen.weigh(kale, 200);
  correctWeight(collection, {kale, Grams(120)}, "typed 200 for 120", kOther);
  const auto weighings = kitchen.bowl("family").items.at(0).weighings;
  ASSERT_EQ(weighings.size(), 2U);
  EXPECT_EQ(weighings[0].actual, Grams(200));
  EXPECT_EQ(weighings[1].correction, "typed 200 for 120");
  EXPECT_EQ(entryThatCounts(weighings)->actual, Grams(120));
  EXPECT_THAT(refusal(collection,
                      [&] {
                        correctWeight(collection, {kale, Grams(1)}, "", kOther);
                      }),
              HasSubstr("needs a reason"));
}

TEST_F(FeedingVerbs, ADayOpenedOnTwoMachinesLosesNothingAndTellsBoth) {
  Collection elsewhere = Collection::open(collection.file(), kNow);
  const OpenedSheet again = openSheet(elsewhere, "Small Mammals", kitchen.today, kitchen.planned(), kOther);
  EXPECT_EQ(again.added, 0U);
  ASSERT_EQ(again.wereThere.size(), 2U);
  EXPECT_EQ(again.wereThere[0], (intake::BowlKey{"family", kitchen.today, 1}));
  const WeightRead mine{kitchen.item("family", 1), Grams(120)};
  const WeightRead theirs{kitchen.item("family", 1), Grams(118)};
  EXPECT_EQ(weighIn(collection, {&mine, 1}, kKeeper).at(0), Kept::First);
  EXPECT_EQ(weighIn(elsewhere, {&theirs, 1}, kOther).at(0), Kept::Second);
  const auto weighings = kitchen.bowl("family").items.at(0).weighings;
  ASSERT_EQ(weighings.size(), 2U);
  EXPECT_TRUE(weighings[1].second);
  EXPECT_EQ(weighings[1].actual, Grams(118));
  EXPECT_EQ(weighings[1].by.who, "Keeper B");
  EXPECT_EQ(entryThatCounts(weighings)->actual, Grams(120));  // until somebody corrects to the other
}

TEST_F(FeedingVerbs, ABowlThatComesLaterIsAddedBesideThoseThereAre) {
  auto bowls = kitchen.planned();
  bowls.push_back(bowls.back());
  bowls.back().label = "Pair, evening";
  const OpenedSheet opened = openSheet(collection, "Small Mammals", kitchen.today, bowls, kKeeper);
  EXPECT_EQ(opened.added, 1U);
  const auto evening = findBowl(collection, {"pair", kitchen.today, 2});
  ASSERT_TRUE(evening);
  EXPECT_EQ(evening->label, "Pair, evening");
}

TEST_F(FeedingVerbs, WeighedAfterMidnightItIsStillOfItsDay) {
  kitchen.weigh(kitchen.item("pair", 1), 40, {"Keeper A", "2026-11-26T00:10:00Z"});
  EXPECT_EQ(kitchen.bowl("pair").items.at(0).weighings.at(0).by.at, "2026-11-26T00:10:00Z");
  EXPECT_TRUE(bowlsOfDay(collection, day("2026-11-26")).empty());
}

TEST_F(FeedingVerbs, WhatNoBowlWeighsIsRefusedAndNothingIsWritten) {
  const auto kale = kitchen.item("family", 1);
  const double nothing = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THAT(refusal(collection, [&] { kitchen.weigh(kale, -12); }), HasSubstr("tare the empty bowl"));
  EXPECT_THAT(refusal(collection, [&] { kitchen.weigh(kale, nothing); }), HasSubstr("tare the empty bowl"));
  EXPECT_THAT(refusal(collection, [&] { kitchen.weigh(kale, 1e12); }), HasSubstr("no weight of a bowl"));
  EXPECT_THAT(refusal(collection, [&] { kitchen.weigh(kitchen.item("family", 9), 3); }),
              HasSubstr("no food 9 in bowl 1 of family on 2026-11-25"));
  EXPECT_THAT(refusal(collection, [&] { kitchen.weigh(kitchen.item("nobody", 1), 3); }),
              HasSubstr("no group nobody"));
  EXPECT_THAT(refusal(collection,
                      [&] {
                        kitchen.weigh(kale, 120, {"Keeper A", "2026-11-25"});
                      }),
              HasSubstr("no time to the second"));
}

TEST_F(FeedingVerbs, OfAListWithOneWrongWeightNoneIsWritten) {
  const std::vector<WeightRead> weights{{kitchen.item("family", 1), Grams(120)},
                                        {kitchen.item("family", 2), Grams(-1)}};
  EXPECT_FALSE(refusal(collection, [&] { weighIn(collection, weights, kKeeper); }).empty());
  EXPECT_TRUE(kitchen.bowl("family").items.at(0).weighings.empty());
}

TEST_F(FeedingVerbs, LeftoversAreWeighedAllEatenNotWeighedSpilledOrStolen) {
  const auto kale = kitchen.item("family", 1);
  const auto pellet = kitchen.item("family", 2);
  kitchen.leave({kale, LeftoverKind::Stolen, Grams(12.5), Grams(30)}, kOther);
  kitchen.leave({pellet, LeftoverKind::AllEaten, {}, {}});
  const auto bowl = kitchen.bowl("family");
  const intake::Leftover stolen{
      .kind = LeftoverKind::Stolen, .left = Grams(12.5), .lost = Grams(30), .by = {"Keeper B", kOther.at}};
  EXPECT_EQ(bowl.items.at(0).leftovers, std::vector{stolen});
  EXPECT_EQ(bowl.items.at(1).leftovers.at(0).kind, LeftoverKind::AllEaten);
  EXPECT_EQ(kitchen.leave({pellet, LeftoverKind::Weighed, Grams(2), {}}, kOther), Kept::Second);
  correctLeftover(collection, {pellet, LeftoverKind::Weighed, Grams(2), {}}, "found under the shelf", kOther);
  EXPECT_EQ(entryThatCounts(kitchen.bowl("family").items.at(1).leftovers)->left, Grams(2));
}

TEST_F(FeedingVerbs, ALeftoverThatContradictsItselfIsRefused) {
  const auto kale = kitchen.item("family", 1);
  EXPECT_THAT(refusal(collection,
                      [&] {
                        kitchen.leave({kale, LeftoverKind::Weighed, {}, {}});
                      }),
              HasSubstr("how much was left"));
  EXPECT_THAT(refusal(collection,
                      [&] {
                        kitchen.leave({kale, LeftoverKind::AllEaten, Grams(3), {}});
                      }),
              HasSubstr("no grams left"));
  EXPECT_THAT(refusal(collection,
                      [&] {
                        kitchen.leave({kale, LeftoverKind::Weighed, Grams(3), Grams(1)});
                      }),
              HasSubstr("spilled or stolen"));
}

TEST_F(FeedingVerbs, AMixedRemainderIsOfTheBowlAndItsPartsAreMarkedAsEstimated) {
  const intake::BowlKey family{"family", kitchen.today, 1};
  EXPECT_EQ(noteRemainder(collection, family, Grams(44), kKeeper), Kept::First);
  EXPECT_EQ(noteRemainder(collection, family, Grams(45), kOther), Kept::Second);
  correctRemainder(collection, family, Grams(41), "the plate was on the scale", kOther);
  kitchen.leave({kitchen.item("family", 1), LeftoverKind::Estimated, Grams(40), {}});
  const auto bowl = kitchen.bowl("family");
  EXPECT_EQ(bowl.remainders.size(), 3U);
  EXPECT_EQ(entryThatCounts(bowl.remainders)->left, Grams(41));
  EXPECT_EQ(bowl.items.at(0).leftovers.at(0).kind, LeftoverKind::Estimated);
}

TEST_F(FeedingVerbs, TheLogHasOneEntryASheetAndOneACorrectionAndNoneAWeight) {
  const auto before = newestChanges(collection, 1).at(0).number;
  kitchen.weigh(kitchen.item("family", 1), 120);
  kitchen.leave({kitchen.item("family", 1), LeftoverKind::AllEaten, {}, {}});
  EXPECT_EQ(newestChanges(collection, 1).at(0).number, before);
  correctWeight(collection, {kitchen.item("family", 1), Grams(119)}, "read wrongly", kOther);
  const Change change = newestChanges(collection, 1).at(0);
  EXPECT_EQ(change.verb, "correct weight");
  EXPECT_THAT(change.after.value(), HasSubstr("read wrongly"));
  EXPECT_THAT(refusal(collection, [&] { undo(collection, change.number, kKeeper); }),
              HasSubstr("cannot be taken back"));
}

TEST_F(FeedingVerbs, HistoryCannotBeWrittenOverEvenInTheFile) {
  correctWeight(collection, {kitchen.item("family", 1), Grams(119)}, "read wrongly", kOther);
  for (const char* attempt : {"UPDATE feeding_correction SET mg = 1", "DELETE FROM feeding_correction",
                              "UPDATE feeding_line SET weighed_mg = -1", "DELETE FROM feeding_bowl",
                              "UPDATE feeding_line SET left_kind = 6"}) {
    const auto error =
        errorOf([&] { guarded(collection.file(), [&] { collection.inner().sql() << attempt; }); });
    EXPECT_TRUE(error) << attempt;
  }
}

TEST_F(FeedingVerbs, WhatWasFedStaysAndFollowsItsNewCode) {
  const StoredFood kale = findFood(collection, "kale").value();
  EXPECT_THAT(refusal(collection, [&] { removeFood(collection, kale.id, kale.revision, kKeeper); }),
              HasSubstr("kale was fed"));
  FoodRecord renamed = kale.record;
  renamed.food.code = "kale-raw";
  editFood(collection, kale.id, kale.revision, renamed, kKeeper);
  EXPECT_EQ(kitchen.bowl("family").items.at(0).food, "kale-raw");
  const StoredGroup pair = findGroup(collection, "pair").value();
  EXPECT_THAT(refusal(collection, [&] { removeGroup(collection, pair.id, pair.revision, kKeeper); }),
              HasSubstr("pair was fed"));
}

TEST_F(FeedingVerbs, AFoodThatTheCollectionDoesNotHoldMayStandOnASheet) {
  const std::vector<intake::Bowl> bowls{{.key = {"pair", kitchen.today, 1},
                                         .label = "Browse",
                                         .items = {{.food = "willow", .planned = Grams(5)}}}};
  openSheet(collection, "Small Mammals", kitchen.today, bowls, kKeeper);
  EXPECT_EQ(findBowl(collection, {"pair", kitchen.today, 2})->items.at(0).food, "willow");
}

TEST_F(FeedingVerbs, TheRuleOfWeighingIsTheHousesOwnAndCanBeTakenBack) {
  EXPECT_EQ(toleranceRule(collection), intake::ToleranceRule{});
  const intake::ToleranceRule strict{.ofStep = 1, .leastSteps = 1, .ofBowl = 0.01, .ofBody = 0.001};
  setToleranceRule(collection, strict, kKeeper);
  const Written wide = setToleranceRule(collection, {.leastSteps = 5}, kKeeper);
  undo(collection, wide.change, kKeeper);
  EXPECT_EQ(toleranceRule(collection), strict);
  EXPECT_FALSE(refusal(collection, [&] { setToleranceRule(collection, {.ofBowl = -1}, kKeeper); }).empty());
}

TEST_F(FeedingVerbs, ABowlIsReadAsItCountsWithoutWhatWasSwappedOut) {
  kitchen.weigh(kitchen.item("family", 1), 200);
  correctWeight(collection, {kitchen.item("family", 1), Grams(121)}, "typed wrongly", kOther);
  kitchen.leave({kitchen.item("family", 1), LeftoverKind::Weighed, Grams(20), {}});
  noteRemainder(collection, {"family", kitchen.today, 1}, Grams(30), kKeeper);
  correctRemainder(collection, {"family", kitchen.today, 1}, Grams(31), "tared", kOther);
  addSwap(collection,
          {.instead = kitchen.item("family", 2), .given = {{"endive", Grams(60)}}, .why = "not delivered"},
          kOther);
  std::vector<intake::CountedBowl> bowls;
  CountedBowlReader(collection)
      .read("family", kitchen.today, kitchen.today,
            [&](const intake::CountedBowl& bowl) { bowls.push_back(bowl); });
  const intake::CountedBowl expected{
      .group = "family",
      .day = kitchen.today,
      .label = "Family, morning",
      .diet = "lemur-morning",
      .animals = 5,
      .remainder = Grams(31),
      .items = {
          {"kale", Grams(120), Grams(121), intake::CountedLeftover{LeftoverKind::Weighed, Grams(20), {}}},
          {"endive", Grams(60), {}, {}, true}}};
  EXPECT_EQ(bowls, std::vector{expected});
  EXPECT_EQ(counted(findBowl(collection, {"family", kitchen.today, 1}).value()), expected);
}

TEST_F(FeedingVerbs, BowlsOfAllGroupsComeGroupByGroup) {
  std::vector<std::string> groups;
  CountedBowlReader(collection)
      .read(std::nullopt, kitchen.today, kitchen.today,
            [&](const intake::CountedBowl& bowl) { groups.push_back(bowl.group); });
  EXPECT_EQ(groups, (std::vector<std::string>{"family", "pair"}));
}

}  // namespace
}  // namespace tarebowl::store
