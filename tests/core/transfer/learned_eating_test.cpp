// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The fennecs leave their vegetables (first planted story): their diet, counted by what they eat of it.
#include "core/transfer/learned_eating.h"

#include "core/transfer/desk_sheet.h"
#include "tests/core/transfer/brackenmere.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace tarebowl::transfer {
namespace {

const store::Collection& brackenmere() {
  static const OwnSample kSample(FeedingDays::TakenIn);
  return kSample.collection;
}

DeskDiet fennecs(CountedAs counted) {
  const auto fed = store::fedOn(brackenmere(), "fennec-evening", kSampleDay).value();
  return readDesk(brackenmere(), fed.id, kSampleDay, counted).value();
}

TEST(LearnedEating, VegetablesThatAreLeftCountForLess) {
  const DeskDiet desk = fennecs(CountedAs::Eaten);
  const diet::DietFood& courgette = desk.context.foods.at("courgette-raw");
  EXPECT_LT(courgette.eatenFraction, 0.4);
  EXPECT_GT(desk.context.foods.at("chick-day-old").eatenFraction, 0.85);
  EXPECT_FALSE(desk.eaten.empty());
}

TEST(LearnedEating, OfferedCountsAllOfIt) {
  for (const auto& [code, food] : fennecs(CountedAs::Offered).context.foods)
    EXPECT_EQ(food.eatenFraction, 1.0) << code;
}

TEST(LearnedEating, GramsAreThoseOfTheVersionEitherWay) {
  EXPECT_EQ(fennecs(CountedAs::Eaten).made.amounts, fennecs(CountedAs::Offered).made.amounts);
}

TEST(LearnedEating, ThePageSaysWhatItIsJudgedBy) {
  const exchange::DietSheet offered = sheetOf(fennecs(CountedAs::Offered));
  const exchange::DietSheet eaten = sheetOf(fennecs(CountedAs::Eaten));
  EXPECT_THAT(exchange::sheetAsHtml(eaten), testing::HasSubstr("Energy and targets are of what is eaten:"));
  EXPECT_THAT(exchange::sheetAsHtml(offered), testing::Not(testing::HasSubstr("of what is eaten")));
  EXPECT_LT(eaten.energy.value(), offered.energy.value());
}

}  // namespace
}  // namespace tarebowl::transfer
