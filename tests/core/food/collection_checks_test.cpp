// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/collection_checks.h"

#include "core/food/robust.h"
#include "tests/core/food/food_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

// Foods are invented.
namespace tarebowl::food {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr quantity::Date kToday{std::chrono::year{2026}, std::chrono::November, std::chrono::day{25}};

/// Twelve leaves with 200 … 310 mg calcium and 40 … 51 mg phosphorus per 100 g, half of it water.
std::vector<CheckedFood> leaves() {
  std::vector<CheckedFood> foods;
  for (int i = 0; i < 12; ++i)
    foods.push_back({.name = "Leaf " + std::to_string(i),
                     .group = "leaf",
                     .composition = foodOf({{"WATER", 50.0}, {"CA", 200.0 + 10.0 * i}, {"P", 40.0 + i}})});
  return foods;
}

std::vector<FoodFinding> of(CheckCode code, const std::vector<CheckedFood>& foods) {
  std::vector<FoodFinding> findings = checkFoods(foods, kToday);
  std::erase_if(findings, [&](const FoodFinding& it) { return it.finding.code != code; });
  return findings;
}

TEST(Robust, MedianAndMadOfIglewiczAndHoaglinStayWhereOneValueIsWild) {
  // Median 4; deviations 2, 1, 0, 1, 96: their median 1, so the spread is 1 / 0.6745.
  const std::array values{2.0, 3.0, 4.0, 5.0, 100.0};
  const auto scatter = robustScatter(values);
  ASSERT_TRUE(scatter);
  EXPECT_DOUBLE_EQ(scatter->median, 4.0);
  EXPECT_DOUBLE_EQ(robustZ(100.0, *scatter), 0.6745 * 96.0);
}

TEST(Robust, TakesTheMeanDeviationWhereMostValuesAreEqual) {
  // Median 1, MAD 0; mean absolute deviation 4/4 = 1.
  const std::array values{1.0, 1.0, 1.0, 5.0};
  EXPECT_DOUBLE_EQ(robustScatter(values)->spread, 1.253314);
  const std::array equal{2.0, 2.0, 2.0};
  EXPECT_FALSE(robustScatter(equal));
  EXPECT_FALSE(robustScatter({}));
}

TEST(CollectionChecks, HaveNothingToSayOfAnOrdinaryGroup) {
  EXPECT_THAT(checkFoods(leaves(), kToday), IsEmpty());
}

TEST(CollectionChecks, AThousandTimesTheGroupIsASlipOfAUnit) {
  auto foods = leaves();
  foods[3].composition = foodOf({{"WATER", 50.0}, {"CA", 0.25}, {"P", 45.0}});  // g for mg
  const auto slips = of(CheckCode::UnitSlip, foods);
  ASSERT_THAT(slips, SizeIs(1));
  EXPECT_EQ(slips[0].food, 3U);
  EXPECT_DOUBLE_EQ(slips[0].finding.found, 0.5);  // on dry matter, of which there is half
  EXPECT_EQ(slips[0].groupSize, 12U);
  EXPECT_LT(slips[0].robustZ, -3.5);
}

TEST(CollectionChecks, AHundredTimesTheGroupIsFarFromItAndSoIsItsRatio) {
  auto foods = leaves();
  foods[3].composition = foodOf({{"WATER", 50.0}, {"CA", 25000.0}, {"P", 45.0}});
  EXPECT_THAT(of(CheckCode::FarFromGroup, foods), SizeIs(1));
  EXPECT_THAT(of(CheckCode::UnitSlip, foods), IsEmpty());
  const auto ratios = of(CheckCode::RatioFarFromGroup, foods);
  ASSERT_THAT(ratios, SizeIs(1));
  EXPECT_DOUBLE_EQ(ratios[0].finding.found, 25000.0 / 45.0);
}

TEST(CollectionChecks, AFewFoodsAreNoGroupToBeFarFrom) {
  auto foods = leaves();
  foods.resize(9);
  foods[3].composition = foodOf({{"WATER", 50.0}, {"CA", 25000.0}, {"P", 45.0}});
  EXPECT_THAT(of(CheckCode::FarFromGroup, foods), IsEmpty());
}

TEST(CollectionChecks, MineralsWeighLessThanTheirAsh) {
  // 2 g of calcium and 1 g of phosphorus in 2 g of ash.
  const std::vector<CheckedFood> foods{
      {.name = "Meal", .composition = foodOf({{"ASH", 2.0}, {"CA", 2000.0}, {"P", 1000.0}})},
      {.name = "Bone", .composition = foodOf({{"ASH", 9.0}, {"CA", 2000.0}, {"P", 1000.0}})}};
  const auto findings = of(CheckCode::MineralsOverAsh, foods);
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_EQ(findings[0].food, 0U);
  EXPECT_DOUBLE_EQ(findings[0].finding.found, 3.0);
}

TEST(CollectionChecks, AGuaranteeIsNoMean) {
  CheckedFood pellet{.name = "Pellet"};
  pellet.composition.set(nutrients::protein(),
                         {.amount = quantity::AsFedContent(26.0), .qualifier = Qualifier::AtLeast});
  pellet.composition.set(nutrients::fat(), {.amount = quantity::AsFedContent(9.0)});
  const auto findings = of(CheckCode::GuaranteeAsMean, {pellet});
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_THAT(findings[0].finding.nutrients, ::testing::ElementsAre(nutrients::protein()));
}

TEST(CollectionChecks, NamesAreOneWhateverTheirCaseAndPunctuation) {
  const std::vector<CheckedFood> foods{{.name = "Kale, curly", .form = "raw"},
                                       {.name = "kale (curly)", .form = "Raw"},
                                       {.name = "Kale, curly", .form = "steamed"}};
  const auto twins = of(CheckCode::SameName, foods);
  ASSERT_THAT(twins, SizeIs(1));
  EXPECT_EQ(twins[0].food, 1U);
  EXPECT_EQ(twins[0].other, 0U);
}

TEST(CollectionChecks, TheSameNumbersThroughoutAreOneFoodUnderTwoNames) {
  const auto many = foodOf({{"WATER", 50},
                            {"PROCNT", 3},
                            {"FAT", 1},
                            {"ASH", 2},
                            {"CHOCDF", 44},
                            {"CA", 200},
                            {"P", 40},
                            {"MG", 30}});
  auto other = many;
  other.set(nutrients::calcium(), {.amount = quantity::AsFedContent(201.0)});
  const auto twins = of(CheckCode::SameComposition, {{.name = "A", .composition = many},
                                                     {.name = "B", .composition = other},
                                                     {.name = "C", .composition = many}});
  ASSERT_THAT(twins, SizeIs(1));
  EXPECT_EQ(twins[0].food, 2U);
  EXPECT_EQ(twins[0].other, 0U);
}

TEST(CollectionChecks, SamplesGrowStale) {
  using namespace std::chrono;
  const std::vector<CheckedFood> foods{
      {.name = "Old", .newestSample = quantity::Date{year{2021}, November, day{1}}},
      {.name = "New", .newestSample = quantity::Date{year{2021}, December, day{1}}},
      {.name = "Undated"}};
  const auto stale = of(CheckCode::Stale, foods);
  ASSERT_THAT(stale, SizeIs(1));
  EXPECT_EQ(stale[0].food, 0U);
}

}  // namespace
}  // namespace tarebowl::food
