// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/look_back.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tarebowl::health {
namespace {

using quantity::Date;

constexpr int kMorning = 8 * 60;

Date dayNumber(int n) {
  return std::chrono::sys_days(std::chrono::year{2026} / 9 / 1) + std::chrono::days(n);
}

BowlEaten bowl(int day, std::vector<FoodEaten> foods, int minute = kMorning) {
  return {dayNumber(day), minute, std::move(foods)};
}

LookedOn look(int day, bool sign, int minute = kMorning) {
  return {dayNumber(day), minute, sign};
}

const FoodLink& linkOf(const LookBack& found, const std::string& food) {
  return *std::ranges::find(found.foods, food, &FoodLink::food);
}

TEST(LookBack, countsTheDayBeforeAgainstDaysWithout) {
  std::vector<BowlEaten> bowls;
  std::vector<LookedOn> looks;
  for (int day = 0; day < 16; ++day) {
    std::vector<FoodEaten> foods{{"kale", 50, 45.0}};
    if (day % 4 == 1) foods.push_back({"broccoli", 20, 20.0});
    bowls.push_back(bowl(day, foods));
    looks.push_back(look(day + 1, day % 4 == 1));
  }
  const LookBack found = lookBack(looks[13], looks, bowls);
  EXPECT_EQ(found.signDays, 4U);
  EXPECT_EQ(found.wellDays, 12U);
  EXPECT_EQ(found.foods.front().food, "broccoli");
  EXPECT_EQ(found.foods.front().days, (TwoByTwo{4, 0, 0, 12}));
  // 4 of 16 days, all of them: 1 / C(16, 4) = 1/1820.
  EXPECT_NEAR(found.foods.front().test.twoSided, 1.0 / 1820.0, 1e-12);
  EXPECT_TRUE(found.foods.front().pointedOut);
  // Eaten on all days: nothing to compare, and nothing to correct for.
  EXPECT_EQ(found.compared, 1U);
  EXPECT_FALSE(linkOf(found, "kale").risk);
}

TEST(LookBack, aDayWithoutIntakeIsLeftOutAndToldAndNotCountedAsNothingEaten) {
  const std::vector<BowlEaten> bowls{bowl(0, {{"kale", 50, 50.0}}), bowl(2, {{"kale", 50, 50.0}})};
  const std::vector<LookedOn> looks{look(1, false), look(2, true), look(3, false)};
  const LookBack found = lookBack(looks[1], looks, bowls);
  EXPECT_EQ(found.withoutIntake, 1U);
  EXPECT_EQ(found.signDays, 0U);
  EXPECT_FALSE(found.signHasIntake);
  EXPECT_EQ(linkOf(found, "kale").days, (TwoByTwo{0, 2, 0, 0}));
}

TEST(LookBack, theWindowHoldsBowlsGivenInItsHours) {
  const std::vector<BowlEaten> bowls{bowl(0, {{"a", 1, 1.0}}), bowl(1, {{"b", 1, 1.0}}),
                                     bowl(1, {{"c", 1, 1.0}}, 17 * 60), bowl(2, {{"d", 1, 1.0}})};
  const auto foods = [&](int hours, int minute) {
    const std::vector<LookedOn> looks{look(2, true, minute)};
    std::string names;
    for (const FoodLink& link : lookBack(looks[0], looks, bowls, {.hours = hours}).foods) names += link.food;
    return names;
  };
  EXPECT_EQ(foods(24, kMorning), "bc");  // yesterday's, the morning bowl just given not
  EXPECT_EQ(foods(48, kMorning), "abc");
  EXPECT_EQ(foods(6, kMorning), "");
  EXPECT_EQ(foods(6, 12 * 60), "d");
  EXPECT_EQ(foods(24, 12 * 60), "cd");
  EXPECT_EQ(foods(1000, kMorning), "abc");  // 72 at most
}

TEST(LookBack, oneIllnessCountsOnce) {
  std::vector<BowlEaten> bowls;
  std::vector<LookedOn> looks;
  for (int day = 0; day < 10; ++day) {
    bowls.push_back(bowl(day, {{"kale", 50, 45.0}}));
    looks.push_back(look(day + 1, day >= 3 && day <= 6));
  }
  const LookBack found = lookBack(looks[3], looks, bowls);
  EXPECT_EQ(found.signDays, 1U);
  EXPECT_EQ(found.sameEpisode, 3U);
  EXPECT_EQ(found.wellDays, 6U);
}

TEST(LookBack, foodsThatAlwaysComeTogetherCannotBeToldApart) {
  std::vector<BowlEaten> bowls;
  std::vector<LookedOn> looks;
  for (int day = 0; day < 12; ++day) {
    bowls.push_back(day % 3 == 0 ? bowl(day, {{"beet", 5, 5.0}, {"dill", 1, 1.0}, {"kale", 5, 5.0}})
                                 : bowl(day, {{"kale", 5, 5.0}}));
    looks.push_back(look(day + 1, day % 3 == 0));
  }
  const LookBack found = lookBack(looks[9], looks, bowls);
  EXPECT_EQ(linkOf(found, "beet").alwaysWith, std::vector<std::string>{"dill"});
}

TEST(LookBack, saysWhatWasOtherwiseBeforeTheSign) {
  std::vector<BowlEaten> bowls;
  std::vector<LookedOn> looks;
  const std::vector<double> kale{40, 42, 39, 41, 40, 43, 38, 41};
  for (int day = 0; day < 8; ++day) {
    bowls.push_back(bowl(
        day, {{"kale", 50, kale[static_cast<std::size_t>(day)]}, {"pellet", 10, 10.0}, {"egg", 5, 5.0}}));
    looks.push_back(look(day + 1, false));
  }
  bowls.push_back(bowl(8, {{"kale", 50, 12.0}, {"pellet", 10, std::nullopt}, {"melon", 30, 30.0, true}}));
  looks.push_back(look(9, true));
  const LookBack found = lookBack(looks.back(), looks, bowls);
  EXPECT_EQ(found.differences,
            (std::vector<Difference>{{DifferenceKind::NewFood, "melon", 30.0, {}},
                                     {DifferenceKind::LessThanUsual, "kale", 12.0, 40.5},
                                     {DifferenceKind::NotOffered, "egg", 0.0, 5.0},
                                     {DifferenceKind::SwappedIn, "melon", 30.0, {}},
                                     {DifferenceKind::LeftoverMissing, "pellet", {}, {}}}));
  EXPECT_TRUE(linkOf(found, "melon").newFood);
  EXPECT_EQ(found.leftoversMissing, 1U);
}

TEST(LookBack, aLotThatWasNeverFedBeforeIsToldAndAFoodThatIsNewItselfIsNotTwice) {
  std::vector<BowlEaten> bowls;
  std::vector<LookedOn> looks;
  for (int day = 0; day < 6; ++day) {
    bowls.push_back(bowl(day, {{"crickets", 5, 5.0, false, "C-17"}, {"kale", 50, 40.0}}));
    looks.push_back(look(day + 1, false));
  }
  bowls.push_back(
      bowl(6, {{"crickets", 5, 5.0, false, "C-18"}, {"kale", 50, 40.0}, {"melon", 30, 30.0, false, "M-1"}}));
  looks.push_back(look(7, true));
  const LookBack found = lookBack(looks.back(), looks, bowls);
  EXPECT_EQ(found.differences,
            (std::vector<Difference>{{DifferenceKind::NewFood, "melon", 30.0, {}},
                                     {DifferenceKind::NewLot, "crickets", 5.0, {}, "C-18"}}));
}

TEST(LookBack, aLotThatWasFedBeforeIsNoNewOne) {
  const std::vector<BowlEaten> bowls{bowl(0, {{"crickets", 5, 5.0, false, "C-17"}}),
                                     bowl(1, {{"crickets", 5, 5.0, false, "C-18"}}),
                                     bowl(2, {{"crickets", 5, 5.0, false, "C-17"}})};
  const std::vector<LookedOn> looks{look(1, false), look(2, false), look(3, true)};
  EXPECT_TRUE(lookBack(looks.back(), looks, bowls).differences.empty());
}

/// 90 days of a dozen foods, each in the bowl on days of its own, and a sign on one day in nine by chance.
struct WithoutStory {
  std::vector<BowlEaten> bowls;
  std::vector<LookedOn> looks;
  explicit WithoutStory(unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> chance;
    for (int day = 0; day < 90; ++day) {
      std::vector<FoodEaten> foods;
      for (int food = 0; food < 12; ++food)
        if (chance(random) < 0.1 + 0.07 * food) foods.push_back({"food " + std::to_string(food), 10, 9.0});
      bowls.push_back(bowl(day, foods));
      looks.push_back(look(day + 1, chance(random) < 0.11));
    }
  }
};

/// With nothing to find, any finding is a false one, and Benjamini and Hochberg hold the chance of one at q =
/// 10 % or below (below, as counts come in whole numbers). Of 200 collections 20 are expected at most; a
/// binomial count of 200 at 10 % is above 31 one time in 200.
TEST(LookBack, shuffledCollectionsRaiseFalseAlarmsAtTheStatedRateAtMost) {
  int alarms = 0;
  for (unsigned seed = 1; seed <= 200; ++seed) {
    const WithoutStory made(seed);
    const LookBack found = lookBack(made.looks.back(), made.looks, made.bowls);
    alarms +=
        std::ranges::any_of(found.foods, [](const FoodLink& link) { return link.corrected <= 0.10; }) ? 1 : 0;
  }
  EXPECT_LE(alarms, 31);
}

}  // namespace
}  // namespace tarebowl::health
