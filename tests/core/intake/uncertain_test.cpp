// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/uncertain.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace tarebowl::intake {
namespace {

constexpr Source kWater{Origin::Water, 7};

TEST(Uncertain, IndependentErrorsAddAsSquares) {
  const Uncertain a = Uncertain(10.0).addOwn(Origin::Weighing, 3.0);
  const Uncertain b = Uncertain(5.0).addOwn(Origin::Water, 4.0);
  EXPECT_EQ((a + b).value(), 15.0);
  EXPECT_DOUBLE_EQ((a + b).sd(), 5.0);  // sqrt(9 + 16)
  EXPECT_DOUBLE_EQ((a - b).sd(), 5.0);
  EXPECT_DOUBLE_EQ((a + b).sd(Origin::Water), 4.0);
}

TEST(Uncertain, AnErrorThatLiesInBothAddsWholeAndCancelsInADifference) {
  const Uncertain a = Uncertain(10.0).addShared(kWater, 3.0);
  const Uncertain b = Uncertain(5.0).addShared(kWater, 3.0);
  EXPECT_DOUBLE_EQ((a + b).sd(), 6.0);
  EXPECT_DOUBLE_EQ((a - b).sd(), 0.0);
}

TEST(Uncertain, SettledErrorsAreNoLongerShared) {
  Uncertain a = Uncertain(10.0).addShared(kWater, 3.0);
  const Uncertain b = a;
  a.settle(Origin::Water);
  EXPECT_TRUE(a.loadings().empty());
  EXPECT_DOUBLE_EQ(a.sd(), 3.0);
  EXPECT_DOUBLE_EQ((a + b).sd(), std::sqrt(18.0));
}

TEST(Uncertain, AQuotientOfNumbersThatErrTogetherIsSure) {
  // Both are 10 % too high or too low at once: their ratio stays 2.
  const Uncertain a = Uncertain(20.0).addShared(kWater, 2.0);
  const Uncertain b = Uncertain(10.0).addShared(kWater, 1.0);
  EXPECT_DOUBLE_EQ(quotient(a, b).value(), 2.0);
  EXPECT_NEAR(quotient(a, b).sd(), 0.0, 1e-12);
}

TEST(Uncertain, AQuotientOfIndependentNumbersHasTheirRelativeErrorsSquared) {
  const Uncertain a = Uncertain(20.0).addOwn(Origin::Weighing, 2.0);
  const Uncertain b = Uncertain(10.0).addOwn(Origin::Weighing, 1.0);
  EXPECT_DOUBLE_EQ(quotient(a, b).sd(), 2.0 * std::sqrt(0.1 * 0.1 + 0.1 * 0.1));
}

RC_GTEST_PROP(UncertainProperty, ScalesWithItsNumberAndKnowsItsOrigins, ()) {
  const auto loading = [] { return *rc::gen::inRange(-1000, 1000) / 100.0; };
  Uncertain sum;
  double own = 0.0;
  double shared = 0.0;
  const int terms = *rc::gen::inRange(1, 20);
  for (int i = 0; i < terms; ++i) {
    const double a = loading();
    const double b = loading();
    sum += Uncertain(1.0).addOwn(Origin::Weighing, a).addShared({Origin::Composition, 3}, b);
    own += a * a;
    shared += b;
  }
  RC_ASSERT(std::abs(sum.sd(Origin::Weighing) - std::sqrt(own)) < 1e-9);
  RC_ASSERT(std::abs(sum.sd(Origin::Composition) - std::abs(shared)) < 1e-9);
  RC_ASSERT(std::abs((sum * -2.5).sd() - 2.5 * std::sqrt(own + shared * shared)) < 1e-9);
}

}  // namespace
}  // namespace tarebowl::intake
