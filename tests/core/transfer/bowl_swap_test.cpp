// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/bowl_swap.h"

#include "core/diet/swap_effect.h"
#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"
#include "core/store/verbs.h"
#include "core/transfer/eaten_before.h"
#include "core/transfer/kitchen_day.h"
#include "tests/core/transfer/brackenmere.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

using intake::PrepBowl;
using quantity::Grams;

class SwapInABowl : public testing::Test {
 protected:
  SwapInABowl() {
    openDay(collection, readPrepSheet(collection, "Small Mammals", kSampleDay), author);
    sheet = readPrepSheet(collection, "Small Mammals", kSampleDay);
  }
  PrepBowl& foxes() {
    return *std::ranges::find(sheet.bowls, "fennecs", [](const PrepBowl& b) { return b.bowl.key.group; });
  }
  intake::BowlItem& courgette() {
    return *std::ranges::find(foxes().bowl.items, "courgette-raw", &intake::BowlItem::food);
  }
  diet::SwapRequest request() {
    auto asked = swapRequestOn(collection, foxes(), courgette());
    return std::get<diet::SwapRequest>(asked);
  }

  OwnSample sample{FeedingDays::TakenIn};
  store::Collection& collection = sample.collection;
  store::Author author{.who = "Keeper A", .at = "2026-11-20T07:30:00Z"};
  intake::PrepSheet sheet;
};

TEST_F(SwapInABowl, IsSoughtByTheDietThatTheBowlIsFedBy) {
  const diet::SwapRequest asked = request();
  ASSERT_EQ(asked.missing.size(), 1U);
  EXPECT_EQ(asked.problem.foods[asked.missing[0]].id, "courgette-raw");
  EXPECT_EQ(asked.approved[asked.missing[0]], Grams(7.3)) << "21.9 g for three, per animal";
  EXPECT_TRUE(
      std::ranges::none_of(asked.candidates, [](const auto& food) { return food.id == "courgette-raw"; }));
}

TEST_F(SwapInABowl, KnowsHowWellTheGroupAteEachFood) {
  // The foxes of the invented sample leave their vegetables and clear their pellet.
  const auto eaten = request().eatenBefore;
  ASSERT_TRUE(eaten.contains("insect-eater-pellet"));
  ASSERT_TRUE(eaten.contains("courgette-raw"));
  EXPECT_GT(eaten.at("insect-eater-pellet").fraction, eaten.at("courgette-raw").fraction);
  EXPECT_GT(eaten.at("courgette-raw").bowls, 20);
}

// The foxes leave their vegetables (the planted story): as eaten, a gram of one brings less.
TEST_F(SwapInABowl, KeepsWhatIsEatenWhereThatIsCounted) {
  const auto asked = [&](CountedAs counted) {
    return std::get<diet::SwapRequest>(
        swapRequestOn(collection, foxes(), courgette(), Candidates::All, counted));
  };
  const diet::SwapRequest offered = asked(CountedAs::Offered);
  const diet::SwapRequest eaten = asked(CountedAs::Eaten);
  EXPECT_EQ(offered.approved, eaten.approved) << "the bowl is the same";
  EXPECT_EQ(offered.problem.foods[offered.missing[0]].eatenFraction, 1.0);
  EXPECT_LT(eaten.problem.foods[eaten.missing[0]].eatenFraction, 0.4);
  const auto fractionOf = [](const diet::SwapRequest& request, const char* food) {
    return std::ranges::find(request.candidates, food, &diet::DietFood::id)->eatenFraction;
  };
  EXPECT_EQ(fractionOf(offered, "chick-day-old"), 1.0);
  EXPECT_GT(fractionOf(eaten, "chick-day-old"), 0.85);
  EXPECT_LT(fractionOf(eaten, "chick-day-old"), 1.0);
  // Crickets in its place, which they eat: as much eaten dry matter is fewer grams than as much offered.
  const auto equalGrams = [](const diet::SwapRequest& request) {
    const auto at = std::ranges::find(request.candidates, "crickets-adult", &diet::DietFood::id);
    return diet::equalAmounts(request, static_cast<std::size_t>(at - request.candidates.begin())).dryMatter;
  };
  EXPECT_LT(equalGrams(eaten).value(), equalGrams(offered).value());
}

TEST_F(SwapInABowl, OffersOnlyWhatIsInTheHouse) {
  const auto all = request().candidates.size();
  auto food = store::findFood(collection, request().candidates.front().id).value();
  food.record.food.inStock = false;
  store::editFood(collection, food.id, food.revision, food.record, author);
  EXPECT_EQ(request().candidates.size(), all - 1);
}

TEST_F(SwapInABowl, IsWrittenInGramsOfTheBowlAndStandsOnTheSheet) {
  const diet::SwapRequest asked = request();
  const auto ranking = diet::rankSwaps(asked);
  ASSERT_FALSE(ranking.singles.empty());
  const diet::Swap& best = ranking.singles.front();
  const intake::SwapMade made = swapMade(foxes().bowl, courgette(), asked, best, "not delivered");
  ASSERT_EQ(made.given.size(), 1U);
  EXPECT_EQ(made.given[0].amount, best.parts[0].grams * 3.0);
  const bool keeperMay = diet::effectOf(asked, best).approval.keeperMay();
  EXPECT_EQ(made.approval, keeperMay ? intake::SwapApproval::KeeperDecides : intake::SwapApproval::Waiting);
  store::addSwap(collection, made, author);
  sheet = readPrepSheet(collection, "Small Mammals", kSampleDay);
  EXPECT_EQ(courgette().swappedOut, keeperMay);
}

TEST_F(SwapInABowl, IsNotSoughtForWhatIsWeighedInOrIsNotOfTheDiet) {
  const store::WeightRead weight{{foxes().bowl.key, courgette().item}, Grams(21.9)};
  store::weighIn(collection, {&weight, 1}, author);
  sheet = readPrepSheet(collection, "Small Mammals", kSampleDay);
  EXPECT_EQ(std::get<NoSwap>(swapRequestOn(collection, foxes(), courgette())), NoSwap::Weighed);
  intake::BowlItem stranger{.item = 9, .food = "kale-raw", .planned = Grams(3)};
  EXPECT_EQ(std::get<NoSwap>(swapRequestOn(collection, foxes(), stranger)), NoSwap::NotInDiet);
  foxes().bowl.diet.clear();
  EXPECT_EQ(std::get<NoSwap>(swapRequestOn(collection, foxes(), stranger)), NoSwap::NoDiet);
}

}  // namespace
}  // namespace tarebowl::transfer
