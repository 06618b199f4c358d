// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// How well the proximates of a whole published table add up to 100 g: USDA SR28 (2015), 8789 foods. The
// counts were taken from the table with another program; the limits of our own checks rest on them.
#include "core/food/checks.h"
#include "tests/reference/sr28.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::reference {
namespace {

using namespace food;

struct Sums {
  std::vector<double> withCarbohydrate;     // plants and mixed dishes: carbohydrate by difference
  std::vector<double> withoutCarbohydrate;  // meat and fish: all five measured
};

Sums sumsOf(const std::map<int, Sr28Food>& foods) {
  Sums sums;
  for (const auto& [id, item] : foods) {
    const auto composition = compositionOf(item);
    const auto sum = proximateSum(composition);
    if (!sum) continue;
    const bool none = composition.amountPer100g(nutrients::carbohydrateByDifference()) == 0.0;
    (none ? sums.withoutCarbohydrate : sums.withCarbohydrate).push_back(*sum);
  }
  std::ranges::sort(sums.withCarbohydrate);
  std::ranges::sort(sums.withoutCarbohydrate);
  return sums;
}

double shareWithin(double grams, const std::vector<double>& sums) {
  const auto close =
      std::ranges::count_if(sums, [grams](double sum) { return std::abs(sum - 100.0) <= grams + 1e-9; });
  return static_cast<double>(close) / static_cast<double>(sums.size());
}

double quantile(double p, const std::vector<double>& sorted) {
  return sorted[static_cast<std::size_t>(p * static_cast<double>(sorted.size()))];
}

TEST(ProximateClosure, FoodsWithCarbohydrateByDifferenceCloseAlmostExactly) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  const auto sums = sumsOf(*foods).withCarbohydrate;
  EXPECT_EQ(sums.size(), 6306U);
  EXPECT_NEAR(shareWithin(0.05, sums), 0.862, 0.0005);
  EXPECT_NEAR(shareWithin(0.2, sums), 0.927, 0.0005);
  EXPECT_NEAR(shareWithin(1.0, sums), 0.987, 0.0005);
  EXPECT_NEAR(shareWithin(3.0, sums), 0.995, 0.0005);
}

TEST(ProximateClosure, MeatAndFishCloseToThreeGrams) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  const auto sums = sumsOf(*foods).withoutCarbohydrate;
  EXPECT_EQ(sums.size(), 2158U);
  EXPECT_NEAR(quantile(0.5, sums), 100.39, 0.011);
  EXPECT_NEAR(quantile(0.025, sums), 98.13, 0.005);
  EXPECT_NEAR(quantile(0.975, sums), 101.89, 0.005);
  EXPECT_NEAR(shareWithin(1.0, sums), 0.756, 0.0005);
  EXPECT_NEAR(shareWithin(3.0, sums), 0.988, 0.0005);
}

TEST(ProximateClosure, OfAllOfSr28FiftyFourFoodsAreDoubtedAndTwelveOfThemRefused) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  int doubted = 0;
  int refused = 0;
  for (const auto& [id, item] : *foods) {
    for (const auto& finding : checkComposition(compositionOf(item))) {
      if (finding.code != CheckCode::ProximatesDoNotClose) continue;
      ++doubted;
      if (finding.severity == Severity::Refused) ++refused;
    }
  }
  EXPECT_EQ(doubted, 54);  // beyond 3 g
  EXPECT_EQ(refused,
            12);  // eight breads of one maker, three snacks fried in a fat that is not digested, baking soda
}

// A check that doubts everything teaches people to look away.
TEST(ProximateClosure, NoKindOfCheckDoubtsMoreThanOneFoodInFortyOfSr28) {
  const auto foods = loadSr28();
  if (!foods) GTEST_SKIP() << missingNote(kSr28Amounts);
  std::map<CheckCode, std::size_t> doubted;
  for (const auto& [id, item] : *foods)
    for (const auto& finding : checkComposition(compositionOf(item))) ++doubted[finding.code];
  for (const auto& [code, count] : doubted) EXPECT_LE(count, foods->size() / 40) << static_cast<int>(code);
  EXPECT_EQ(doubted[CheckCode::ProximatesOverWhole], 3U);  // three fish of 105.1 to 106.5 g
}

}  // namespace
}  // namespace tarebowl::reference
