// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/rotation_desk.h"

#include "core/diet/rotation_standing.h"
#include "core/exchange/plain_rules.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"
#include "core/transfer/day_of_rotation.h"
#include "core/transfer/kitchen_day.h"
#include "tests/core/transfer/brackenmere.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

using quantity::Date;
using quantity::Grams;

Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

const Date kMonday = on("2026-11-30");

/// Vegetables at will, and a single day's zones so wide that no plan is a matter of luck.
std::string wideRules() {
  exchange::PlainRules rules;
  rules.longestRun = std::nullopt;
  rules.widenDaily = 5.0;
  return exchange::writeRotationRules(rules);
}

/// The foxes' second version, in force since October: chicks, pellet, carrot, beans, courgette; three
/// animals.
class RotationDesk : public testing::Test {
 protected:
  OwnSample sample;
  store::Collection& collection = sample.collection;

  transfer::RotationDesk layOut(const std::string& rules = wideRules()) {
    const auto version = store::fedOn(collection, "fennec-evening", kMonday).value();
    return layOutRotation(collection, readDesk(collection, version.id, kMonday).value(), rules,
                          {std::nullopt, kMonday}, kMonday);
  }
  /// Any plan will do here: how good plans are is tested where they are made.
  static diet::RotationPlan planned(const transfer::RotationDesk& desk) {
    return diet::rotate(
        desk.problem,
        {.deadline = std::chrono::milliseconds(60'000), .nodes = 200, .rounds = 1, .enoughGap = 1e9});
  }
  store::RotationId kept(const transfer::RotationDesk& desk, const diet::RotationPlan& plan) {
    return store::RotationId{
        store::addRotation(collection, keptRotation(desk, plan, 1, desk.from), store::kKeeper).id};
  }
  intake::PrepSheet sheet(Date day) { return readPrepSheet(collection, "Small Mammals", day); }
  static const intake::PrepBowl& foxBowl(const intake::PrepSheet& sheet) {
    return *std::ranges::find(sheet.bowls, "fennecs", [](const auto& b) { return b.bowl.key.group; });
  }
  static Grams plannedIn(const intake::PrepBowl& bowl, const std::string& food) {
    const auto item = std::ranges::find(bowl.bowl.items, food, &intake::BowlItem::food);
    return item == bowl.bowl.items.end() ? Grams(0) : item->planned;
  }
  static std::size_t foodOf(const transfer::RotationDesk& desk, const std::string& code) {
    const auto place = std::ranges::find(desk.places, code, &diet::PlaceInVersion::food);
    return static_cast<std::size_t>(place - desk.places.begin());
  }
};

/// A fasting day, as meat eaters have them.
constexpr const char* kFastOnWednesday = R"({"format": "tarebowl-rotation-rules/1",
    "daily_zones": {"widen": 5}, "off": [{"days": ["wed"]}]})";

TEST_F(RotationDesk, TheKitchenPreparesWhatIsPlannedForTheDay) {
  const auto desk = layOut();
  const auto plan = planned(desk);
  ASSERT_EQ(plan.days.size(), 7U) << plan.reason;
  kept(desk, plan);
  for (int day = 0; day < 7; ++day) {
    const intake::PrepSheet made = sheet(exchange::dateOfDay(kMonday, day));
    const intake::PrepBowl& bowl = foxBowl(made);
    for (const char* food : {"chick-day-old", "insect-eater-pellet", "courgette-raw"})
      EXPECT_NEAR(plannedIn(bowl, food).value(),
                  3 * plan.days[static_cast<std::size_t>(day)][foodOf(desk, food)].value(), 1e-9)
          << food << " on day " << day;
    EXPECT_EQ(bowl.allowances.size(), 1U);  // mealworms for stepping on the scale
  }
  EXPECT_EQ(plannedIn(foxBowl(sheet(on("2026-12-07"))), "chick-day-old"), Grams(120));  // 3 * 40 g again
}

TEST_F(RotationDesk, OnAFastingDayNothingIsPreparedAndNothingThawedForIt) {
  const auto desk = layOut(kFastOnWednesday);
  const auto plan = planned(desk);
  ASSERT_EQ(plan.days.size(), 7U) << plan.reason;
  kept(desk, plan);
  const auto thawedOn = [&](const char* day) {
    const intake::PrepSheet made = sheet(on(day));
    return std::ranges::any_of(made.thawForTomorrow,
                               [](const auto& total) { return total.food.code == "chick-day-old"; });
  };
  EXPECT_TRUE(thawedOn("2026-11-30"));
  EXPECT_FALSE(thawedOn("2026-12-01"));
  EXPECT_TRUE(thawedOn("2026-12-02"));
  const intake::PrepSheet wednesday = sheet(on("2026-12-02"));
  EXPECT_TRUE(
      std::ranges::none_of(wednesday.bowls, [](const auto& b) { return b.bowl.key.group == "fennecs"; }));
  const auto foxes = std::ranges::find(wednesday.withoutBowl, "fennecs", &intake::GroupWithoutBowl::group);
  ASSERT_NE(foxes, wednesday.withoutBowl.end());
  EXPECT_EQ(foxes->why, intake::NoBowl::NothingPlanned);
}

TEST_F(RotationDesk, ADayOfADraftIsNotPrepared) {
  auto desk = layOut();
  const auto draft = store::versionsOfDiet(collection, "fennec-evening").back();
  ASSERT_EQ(draft.record.version.state, diet::VersionState::Draft);
  desk = layOutRotation(collection, readDesk(collection, draft.id, kMonday).value(), wideRules(),
                        {std::nullopt, kMonday}, kMonday);
  kept(desk, planned(desk));
  EXPECT_EQ(plannedIn(foxBowl(sheet(kMonday)), "chick-day-old"), Grams(120));
}

TEST_F(RotationDesk, WhatIsKeptIsReadAsItWasPlanned) {
  auto desk = layOut();
  desk.problem.rules.locked = {{.day = 1, .food = "courgette-raw", .grams = Grams(0)},
                               {.day = 4, .food = "chick-day-old", .grams = Grams(50)}};
  const auto plan = planned(desk);
  ASSERT_EQ(plan.days.size(), 7U) << plan.reason;
  const auto read = readRotation(collection, kept(desk, plan), kMonday).value();
  EXPECT_EQ(read.desk.problem, desk.problem);
  EXPECT_EQ(read.days, plan.days);
  EXPECT_EQ(diet::standingOf(read.desk.problem, read.days).days.size(), 7U);
  EXPECT_DOUBLE_EQ(diet::standingOf(read.desk.problem, read.days).period.shortfall,
                   plan.periodBalance.shortfall);
}

/// Monday is fed: the bowl is opened, chicks are weighed at 100 g instead of what was planned, and courgette
/// did not come: beetroot, which the version does not have, is given instead.
void feedMonday(store::Collection& collection, const intake::PrepSheet& sheet) {
  openDay(collection, sheet, store::kKeeper);
  const intake::BowlKey key{"fennecs", kMonday, 1};
  const auto bowl = store::findBowl(collection, key).value();
  const auto itemOf = [&](const char* food) {
    return std::ranges::find(bowl.items, food, &intake::BowlItem::food)->item;
  };
  const store::WeightRead chicks{{key, itemOf("chick-day-old")}, Grams(100)};
  store::weighIn(collection, {&chicks, 1}, store::kKeeper);
  store::addSwap(collection,
                 {.instead = {key, itemOf("courgette-raw")},
                  .given = {{"beetroot-raw", Grams(24)}},
                  .why = "not delivered",
                  .approval = intake::SwapApproval::KeeperDecides},
                 store::kKeeper);
}

constexpr const char* kCourgetteOnMonday = R"({"format": "tarebowl-rotation-rules/1",
    "locked": [{"day": 1, "food": "courgette-raw", "g": 9}, {"day": 1, "food": "chick-day-old", "g": 40}]})";

TEST_F(RotationDesk, WhatWasFedStaysAndTheRestIsPlannedAgain) {
  auto desk = layOut(kCourgetteOnMonday);
  const auto first = planned(desk);
  ASSERT_EQ(first.days.size(), 7U) << first.reason;
  const auto id = kept(desk, first);
  feedMonday(collection, sheet(kMonday));
  auto read = readRotation(collection, id, on("2026-12-01")).value();
  takeFedDays(collection, read.kept.record, on("2026-12-01"), read.desk);
  ASSERT_EQ(read.desk.problem.rules.fed.size(), 1U);
  const diet::FedDay& monday = read.desk.problem.rules.fed[0];
  EXPECT_NEAR(monday.fed[foodOf(read.desk, "chick-day-old")].value(), 100.0 / 3, 1e-9);
  EXPECT_EQ(monday.fed[foodOf(read.desk, "courgette-raw")], Grams(0));
  EXPECT_NEAR(monday.fed[foodOf(read.desk, "beetroot-raw")].value(), 8, 1e-9);  // 24 g for three
  EXPECT_FALSE(monday.eaten);
  const auto again = planned(read.desk);
  ASSERT_EQ(again.days.size(), 7U) << again.reason;
  EXPECT_EQ(again.days[0], monday.fed);
  for (std::size_t day = 1; day < 7; ++day)  // it was a stopgap
    EXPECT_EQ(again.days[day][foodOf(read.desk, "beetroot-raw")], Grams(0));
  store::editRotation(collection, id, read.kept.revision, keptRotation(read.desk, again, 1, on("2026-12-01")),
                      store::kKeeper);
  const auto after = readRotation(collection, id, on("2026-12-01")).value();
  EXPECT_EQ(after.days, again.days);
  EXPECT_EQ(after.desk.problem.rules.fed, read.desk.problem.rules.fed);
}

TEST_F(RotationDesk, ASwapBeginsAtWhatIsPlannedForTheDay) {
  const auto desk = layOut(kCourgetteOnMonday);
  kept(desk, planned(desk));
  const std::size_t courgette = foodOf(desk, "courgette-raw");
  EXPECT_EQ(amountsOn(collection, desk.diet, kMonday).at(courgette), Grams(9));
  EXPECT_EQ(amountsOn(collection, desk.diet, on("2026-12-07")), desk.diet.made.amounts);
}

TEST_F(RotationDesk, DaysThatAreOverCountAsEatenWhereSomebodyWeighedBack) {
  auto desk = layOut(kCourgetteOnMonday);
  const auto id = kept(desk, planned(desk));
  feedMonday(collection, sheet(kMonday));
  const intake::BowlKey key{"fennecs", kMonday, 1};
  const intake::Bowl fed = store::findBowl(collection, key).value();
  for (const intake::BowlItem& item : fed.items) {
    if (item.swappedOut) continue;
    const bool stolen = item.food == "beetroot-raw";  // all 24 g, by a neighbour
    const store::LeftoverFound left{{key, item.item},
                                    stolen ? intake::LeftoverKind::Stolen : intake::LeftoverKind::AllEaten,
                                    stolen ? std::optional(Grams(0)) : std::nullopt,
                                    stolen ? std::optional(Grams(24)) : std::nullopt};
    store::noteLeftovers(collection, {&left, 1}, store::kKeeper);
  }
  auto read = readRotation(collection, id, on("2026-12-01")).value();
  read.desk.asEaten = true;
  takeFedDays(collection, read.kept.record, on("2026-12-01"), read.desk);
  const diet::FedDay& monday = read.desk.problem.rules.fed.at(0);
  ASSERT_TRUE(monday.eaten);
  EXPECT_NEAR((*monday.eaten)[foodOf(read.desk, "chick-day-old")].value(), 100.0 / 3, 1e-9);
  EXPECT_NEAR((*monday.eaten)[foodOf(read.desk, "beetroot-raw")].value(), 0, 1e-9);
  EXPECT_NEAR(monday.fed[foodOf(read.desk, "beetroot-raw")].value(), 8, 1e-9);
}

TEST_F(RotationDesk, ADayThatNobodyWroteDownWasFedAsPlanned) {
  auto desk = layOut(kCourgetteOnMonday);
  const auto plan = planned(desk);
  auto read = readRotation(collection, kept(desk, plan), on("2026-12-02")).value();
  takeFedDays(collection, read.kept.record, on("2026-12-02"), read.desk);
  ASSERT_EQ(read.desk.problem.rules.fed.size(), 2U);
  EXPECT_EQ(read.desk.problem.rules.fed[1].fed, plan.days[1]);
}

TEST_F(RotationDesk, LossesThatTheRulesStateGoBeforeTheEdiblePartOfTheFood) {
  const auto desk = layOut(R"({"format": "tarebowl-rotation-rules/1",
      "purchase": [{"foods": ["carrot-boiled"], "edible_fraction": 0.5}]})");
  const auto& losses = desk.problem.rules.purchase;
  EXPECT_EQ(losses.size(), desk.diet.made.problem.foods.size() + 1);
  EXPECT_EQ(losses.back().edible, 0.5);
}

}  // namespace
}  // namespace tarebowl::transfer
