// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/quantity.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <type_traits>

namespace tarebowl::quantity {
namespace {

template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};

TEST(Quantities, OfDifferentKindsCannotBeAddedOrMistaken) {
  EXPECT_TRUE((Addable<Grams, Grams>));
  EXPECT_FALSE((Addable<Grams, Kilocalories>));
  EXPECT_FALSE((Addable<Grams, Kilograms>));
  EXPECT_FALSE((Addable<Grams, double>));
  EXPECT_FALSE((std::is_convertible_v<double, Grams>));
}

TEST(Quantities, AddScaleAndCompareLikeTheirNumbers) {
  Grams bowl(120.0);
  bowl += Grams(30.0);
  bowl -= Grams(50.0);
  EXPECT_EQ(bowl, Grams(100.0));
  EXPECT_EQ(bowl * 1.5, 1.5 * bowl);
  EXPECT_EQ(bowl / 4.0, Grams(25.0));
  EXPECT_DOUBLE_EQ(bowl / Grams(400.0), 0.25);
  EXPECT_LT(Grams(99.9), bowl);
  EXPECT_EQ(Grams().value(), 0.0);
}

// 3620 kcal/kg of the worked feed example is 15146.08 kJ/kg by the thermochemical calorie.
TEST(Quantities, KilocaloriesAndKilojoulesStandAt4184) {
  EXPECT_NEAR(toKilojoules(Kilocalories(3620.0)).value(), 15146.08, 1e-9);
  EXPECT_DOUBLE_EQ(toKilocalories(Kilojoules(4.184)).value(), 1.0);
}

RC_GTEST_PROP(Quantities, GramsToKilogramsAndBackIsTheIdentity, (int milligrams)) {
  const Grams mass(milligrams / 1000.0);
  RC_ASSERT(std::abs((toGrams(toKilograms(mass)) - mass).value()) <= 1e-15 * 4 * std::abs(mass.value()));
}

}  // namespace
}  // namespace tarebowl::quantity
