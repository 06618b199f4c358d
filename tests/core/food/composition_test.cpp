// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/composition.h"

#include "tests/core/food/food_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <limits>
#include <map>
#include <stdexcept>

namespace tarebowl::food {
namespace {

using quantity::AsFedContent;
using quantity::DryMatterContent;
using quantity::DryMatterShare;
using quantity::EnergyContent;
using quantity::Kilocalories;

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

TEST(Composition, UnknownIsNotZero) {
  const auto kale = foodOf({{"CA", 0.0}});
  EXPECT_EQ(kale.amountPer100g(nutrients::calcium()), 0.0);
  EXPECT_EQ(kale.amountPer100g(nutrients::phosphorus()), std::nullopt);
  EXPECT_EQ(kale.find(nutrients::phosphorus()), nullptr);
  EXPECT_NE(kale, Composition{});
}

TEST(Composition, ScatterThatNobodyMeasuredIsUnknownNotZero) {
  Composition kale;
  kale.set(nutrients::calcium(), {.amount = AsFedContent(254.0)});
  EXPECT_EQ(kale.sdPer100g(nutrients::calcium()), std::nullopt);
  kale.set(nutrients::calcium(), {.amount = AsFedContent(254.0), .sd = AsFedContent(0.0)});
  EXPECT_EQ(kale.sdPer100g(nutrients::calcium()), 0.0);
}

TEST(Composition, KeepsHowAValueWasReportedAndWhereItComesFrom) {
  const NutrientValue guarantee{.amount = AsFedContent(18.0),
                                .sd = AsFedContent(1.5),
                                .sampleCount = 6,
                                .qualifier = Qualifier::AtLeast,
                                .source = "label"};
  Composition pellet;
  pellet.set(nutrients::protein(), guarantee);
  ASSERT_NE(pellet.find(nutrients::protein()), nullptr);
  EXPECT_EQ(*pellet.find(nutrients::protein()), guarantee);
}

TEST(Composition, AnImpossibleAmountIsRefusedAndLeavesTheOldOne) {
  auto kale = foodOf({{"CA", 254.0}});
  for (const double amount : {-1.0, kNan, kInfinity, -kInfinity})
    EXPECT_THROW(kale.set(nutrients::calcium(), {.amount = AsFedContent(amount)}), std::domain_error)
        << amount;
  for (const double sd : {-1.0, kNan, kInfinity})
    EXPECT_THROW(kale.set(nutrients::calcium(), {.amount = AsFedContent(1.0), .sd = AsFedContent(sd)}),
                 std::domain_error);
  EXPECT_EQ(kale.amountPer100g(nutrients::calcium()), 254.0);
}

TEST(Composition, AValueOnDryMatterIsKeptAsFed) {
  Composition hay;
  // Hay of 12 % moisture with 1.4 g calcium per 100 g DM: 1.4 * 0.88 = 1.232 g, here in mg.
  hay.set(nutrients::calcium(), DryMatterContent(1400.0), DryMatterShare::fromWaterPer100g(12.0), "lab");
  EXPECT_DOUBLE_EQ(hay.amountPer100g(nutrients::calcium()).value(), 1232.0);
  EXPECT_EQ(hay.find(nutrients::calcium())->source, "lab");
}

// Small Animal Clinical Nutrition, 5th ed., Table 71-5: adult mouse, 1.7 kcal/g as fed, 5.0 mg Ca and 3.6 mg
// P per kcal.
TEST(Composition, AValueOnEnergyIsKeptAsFed) {
  Composition mouse;
  mouse.set(nutrients::calcium(), EnergyContent(5000.0), Kilocalories(170.0), "Table 71-5");
  mouse.set(nutrients::phosphorus(), EnergyContent(3600.0), Kilocalories(170.0), "Table 71-5");
  EXPECT_DOUBLE_EQ(mouse.amountPer100g(nutrients::calcium()).value(), 850.0);     // 5.0 * 170
  EXPECT_DOUBLE_EQ(mouse.amountPer100g(nutrients::phosphorus()).value(), 612.0);  // 3.6 * 170
  EXPECT_THROW(mouse.set(nutrients::fat(), EnergyContent(50.0), Kilocalories(0.0), ""), std::domain_error);
}

TEST(Composition, DryMatterIsWhatIsNotWater) {
  EXPECT_DOUBLE_EQ(foodOf({{"WATER", 89.6}}).dryMatter().value().value(), 0.104);
  EXPECT_FALSE(Composition{}.dryMatter());
  EXPECT_FALSE(foodOf({{"WATER", 100.0}}).dryMatter());
  EXPECT_FALSE(foodOf({{"WATER", 140.0}}).dryMatter());
}

TEST(Composition, AnErasedValueIsUnknownAgain) {
  auto kale = foodOf({{"CA", 254.0}, {"P", 55.0}});
  kale.erase(nutrients::calcium());
  kale.erase(nutrients::calcium());
  EXPECT_THAT(kale.knownNutrients(), testing::ElementsAre(nutrients::phosphorus()));
}

RC_GTEST_PROP(Composition, HoldsTheLastValueOfEachNutrientWhateverTheOrder, ()) {
  const auto nutrient = rc::gen::inRange<std::size_t>(0, allNutrients().size());
  const auto writes = *rc::gen::container<std::vector<std::pair<std::size_t, int>>>(
      rc::gen::pair(nutrient, rc::gen::inRange(0, 1000)));
  Composition composition;
  std::map<std::size_t, int> expected;
  for (const auto& [index, amount] : writes) {
    composition.set(NutrientId(index), {.amount = AsFedContent(amount)});
    expected[index] = amount;
  }
  RC_ASSERT(composition.knownNutrients().size() == expected.size());
  for (const auto& [index, amount] : expected)
    RC_ASSERT(composition.amountPer100g(NutrientId(index)) == double(amount));
}

}  // namespace
}  // namespace tarebowl::food
