// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/numbers.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <limits>

namespace tarebowl::exchange {
namespace {

using quantity::Grams;
using ::testing::Optional;

TEST(Numbers, AScaleShowsAsManyDigitsAsItsStepHas) {
  EXPECT_THAT(digitsOf(Grams(1)), Optional(0));
  EXPECT_THAT(digitsOf(Grams(50)), Optional(0));
  EXPECT_THAT(digitsOf(Grams(0.5)), Optional(1));
  EXPECT_THAT(digitsOf(Grams(17.3)), Optional(1));
  EXPECT_THAT(digitsOf(Grams(0.25)), Optional(2));
  EXPECT_THAT(digitsOf(Grams(1e-6)), Optional(6));
  EXPECT_EQ(digitsOf(Grams(1.0 / 3.0)), std::nullopt);
}

TEST(Numbers, GramsOnTheScaleLoseTheDustOfBinaryArithmetic) {
  EXPECT_EQ(onScale(Grams(3 * 0.1), Grams(0.1)), Grams(0.3));
  EXPECT_EQ(onScale(Grams(3 * 17.3), Grams(17.3)), Grams(51.9));
  EXPECT_EQ(onScale(Grams(21.9999999999), Grams(1)), Grams(22));
  EXPECT_EQ(onScale(Grams(-1e-12), Grams(1)), Grams(0));
  EXPECT_FALSE(std::signbit(onScale(Grams(-1e-12), Grams(1)).value()));
}

TEST(Numbers, GramsBetweenTheStepsStayWhatTheyAre) {
  EXPECT_EQ(onScale(Grams(21.37), Grams(1)), Grams(21.37));
  EXPECT_EQ(onScale(Grams(2.0 / 3.0), Grams(1.0 / 3.0)), Grams(2.0 / 3.0));
}

TEST(Numbers, AreWrittenSoThatTheyReadBackTheSame) {
  EXPECT_EQ(toJson(22.0).dump(), "22");
  EXPECT_EQ(toJson(0.1).dump(), "0.1");
  EXPECT_EQ(toJson(0.1 + 0.2).get<double>(), 0.1 + 0.2);
  EXPECT_EQ(toJson(1e300).get<double>(), 1e300);
}

TEST(Numbers, ThatAreNoneAreNull) {
  EXPECT_TRUE(toJson(std::numeric_limits<double>::quiet_NaN()).is_null());
  EXPECT_TRUE(toJson(std::numeric_limits<double>::infinity()).is_null());
  EXPECT_TRUE(toJson(std::optional<double>()).is_null());
}

TEST(Numbers, TextThatIsNotUtf8IsMendedRatherThanRefused) {
  EXPECT_EQ(toText(nlohmann::ordered_json("a\xFF")), "\"a\xEF\xBF\xBD\"\n");
}

}  // namespace
}  // namespace tarebowl::exchange
