// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/health_period.h"

#include "core/store/lot_verbs.h"
#include "tests/core/transfer/brackenmere.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tarebowl::transfer {
namespace {

using health::SignKind;

quantity::Date on(const char* iso) {
  return quantity::parseDate(iso).value();
}

const store::Collection& brackenmere() {
  static const OwnSample kSample(FeedingDays::TakenIn);
  return kSample.collection;
}

HealthPeriod period(const HealthSubject& subject, const char* from = "2026-07-29",
                    const char* to = "2026-11-25") {
  return readHealth(brackenmere(), subject, on(from), on(to)).value();
}

TEST(HealthOfTheSample, HoldsWhatKeepersSaw) {
  const HealthPeriod lemurs = period({.group = "lemurs"});
  EXPECT_GT(lemurs.observations.size(), 115U);  // a day each, of the 120 to 25 November
  EXPECT_FALSE(lemurs.masses.empty());
  EXPECT_EQ(lemurs.animals.at(on("2026-11-25")), 5);
  EXPECT_FALSE(readHealth(brackenmere(), {.group = "nobody"}, on("2026-07-29"), on("2026-11-25")));
  EXPECT_FALSE(
      readHealth(brackenmere(), {.group = "", .individual = "nobody"}, on("2026-07-29"), on("2026-11-25")));
}

/// The last day on which the lemurs' faeces were soft.
quantity::Date lastSign(const HealthPeriod& lemurs) {
  const auto seen = std::ranges::find_if(lemurs.observations.rbegin(), lemurs.observations.rend(),
                                         [](const auto& one) { return health::isSign(one.record); });
  return seen->record.on;
}

// Third planted story: broccoli is given on nine days of October and November; a day later faeces are soft (6
// of 7) with a chance of 0.8, on other days of 0.03 (sample-data/generator/feeding.py).
TEST(HealthOfTheSample, TheLemursFaecesAreSoftADayAfterBroccoli) {
  const HealthPeriod lemurs = period({.group = "lemurs"});
  const auto found = lookBackFrom(lemurs, SignKind::Faeces, lastSign(lemurs));
  ASSERT_TRUE(found);
  ASSERT_FALSE(found->foods.empty());
  const health::FoodLink& first = found->foods.front();
  EXPECT_EQ(first.food, "broccoli-raw");
  EXPECT_EQ(first.days.eaten(), 9U);
  EXPECT_GE(first.days.eatenSign, 6U);
  EXPECT_LE(first.days.withoutSign, 4U);
  EXPECT_TRUE(first.pointedOut);
  EXPECT_LT(first.corrected, 1e-4);
  EXPECT_EQ(std::ranges::count_if(found->foods, [](const health::FoodLink& link) { return link.pointedOut; }),
            1);
  EXPECT_GE(found->withoutIntake, 1U);  // the day before the first is not recorded
}

TEST(HealthOfTheSample, BroccoliWasNewBeforeTheFirstOfThem) {
  const auto found = lookBackFrom(period({.group = "lemurs"}), SignKind::Faeces, on("2026-10-20"));
  ASSERT_TRUE(found);
  EXPECT_TRUE(std::ranges::any_of(found->differences, [](const health::Difference& difference) {
    return difference.kind == health::DifferenceKind::NewFood && difference.food == "broccoli-raw";
  }));
  EXPECT_TRUE(found->foods.front().newFood);
  EXPECT_FALSE(lookBackFrom(period({.group = "lemurs"}), SignKind::Faeces, on("2026-10-21")));  // formed
}

/// The lemurs' own bowls with their signs put on other days by lot: a collection without a story. At a false
/// rate of 10 % no more than 20 of 200 are expected to point something out; above 31 is one time in 200.
TEST(HealthOfTheSample, ALotThatBeganTheDayBeforeASignIsTold) {
  OwnSample sample(FeedingDays::TakenIn);
  store::addLot(sample.collection, {"leaf-eater-pellet", "B-31", on("2026-06-01"), "Keeper A", ""},
                store::kKeeper);
  store::addLot(sample.collection, {"leaf-eater-pellet", "B-32", on("2026-10-19"), "Keeper A", ""},
                store::kKeeper);
  const auto lemurs = readHealth(sample.collection, {.group = "lemurs"}, on("2026-07-29"), on("2026-11-25"));
  const auto found = lookBackFrom(*lemurs, SignKind::Faeces, on("2026-10-20"));
  ASSERT_TRUE(found);
  std::vector<std::string> lots;
  for (const health::Difference& difference : found->differences)
    if (difference.kind == health::DifferenceKind::NewLot) lots.push_back(difference.lot);
  EXPECT_EQ(lots, std::vector<std::string>{"B-32"});
}

TEST(HealthOfTheSample, WithItsSignsShuffledAlarmsStayAtTheStatedRate) {
  const HealthPeriod lemurs = period({.group = "lemurs"});
  std::vector<health::LookedOn> looks = looksFor(lemurs, SignKind::Faeces);
  std::mt19937 random(20261125);
  int alarms = 0;
  for (int collection = 0; collection < 200; ++collection) {
    std::vector<bool> signs;
    for (const health::LookedOn& look : looks) signs.push_back(look.sign);
    std::shuffle(signs.begin(), signs.end(), random);
    for (std::size_t i = 0; i < looks.size(); ++i) looks[i].sign = signs[i];
    const health::LookBack found = health::lookBack(looks.back(), looks, lemurs.bowls);
    alarms +=
        std::ranges::any_of(found.foods, [](const health::FoodLink& link) { return link.corrected <= 0.10; })
            ? 1
            : 0;
  }
  EXPECT_LE(alarms, 31);
}

// The sample's last bowl is of 24 November, its last observation of a lemur of 25 November.
TEST(HealthOfTheSample, EndsWithItsLastRecordHoweverLateItIsLookedAt) {
  const auto last = [](const HealthSubject& subject, const char* until) {
    return lastRecordOf(brackenmere(), subject, on(until));
  };
  const auto lemurs = last({.group = "lemurs"}, "2031-01-01");
  ASSERT_TRUE(lemurs);
  const HealthPeriod whole = period({.group = "lemurs"}, "2026-07-29", "2026-12-31");
  EXPECT_EQ(*lemurs,
            std::max({whole.bowls.back().day, whole.observations.back().record.on, whole.masses.back().day}));
  EXPECT_EQ(last({.group = "lemurs"}, "2026-09-01"), on("2026-09-01"));  // fed on that day, as on each
  EXPECT_FALSE(last({.group = "nobody"}, "2031-01-01"));
}

// Second planted story, as a vet sees it.
TEST(HealthOfTheSample, TheDragonsCalciumIsShortAsEatenInAugustAndALittleLimestoneMendsIt) {
  const HealthPeriod dragons = period({.group = "dragons"}, "2026-08-07", "2026-08-16");
  const health::CalciumReview review = calciumOf(brackenmere(), dragons, {.supplement = "limestone"});
  EXPECT_EQ(review.daysOfPeriod, 10U);
  EXPECT_GT(review.ratioOffered.value(), 1.0);
  EXPECT_LT(review.ratioEaten.value(), 0.6);
  ASSERT_TRUE(review.advice);
  EXPECT_EQ(review.advice->dose.answer, health::DoseAnswer::Found);
  EXPECT_GE(review.advice->caPAfter.value(), 1.0);
  const auto half = calciumOf(brackenmere(), dragons, {.supplement = "limestone", .retained = 0.5});
  EXPECT_NEAR(half.advice->dose.exact.value(), 2.0 * review.advice->dose.exact.value(), 1e-9);
}

TEST(HealthOfTheSample, AnAnimalIsReviewedByTheBowlThatItShares) {
  const HealthPeriod group = period({.group = "dragons"});
  ASSERT_FALSE(group.intake.group.members.empty());
  const std::string one = group.intake.group.members.front();
  const HealthPeriod animal = period({.group = "", .individual = one});
  EXPECT_EQ(animal.subject.group, "dragons");
  EXPECT_TRUE(animal.sharesItsBowl());
  EXPECT_TRUE(std::ranges::all_of(animal.masses, [&](const MassSeen& mass) { return mass.who == one; }));
}

}  // namespace
}  // namespace tarebowl::transfer
