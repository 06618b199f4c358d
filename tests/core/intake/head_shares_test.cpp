// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/head_shares.h"

#include "tests/core/intake/feeding.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;
using Masses = std::vector<std::optional<quantity::Kilograms>>;

Masses kilograms(std::initializer_list<double> values) {
  Masses masses;
  for (const double value : values) masses.emplace_back(quantity::Kilograms(value));
  return masses;
}

// 363.636364 g among animals of 4, 5 and 3 kg.
TEST(HeadShares, AreEqualByMassOrByMetabolicMass) {
  const Masses masses = kilograms({4, 5, 3});
  const double grams = 4000.0 / 11.0;
  const auto of = [&](ShareBy by, std::size_t head) { return grams * headShares(by, masses).value()[head]; };
  EXPECT_NEAR(of(ShareBy::Equal, 0), 121.212121, 5e-7);
  EXPECT_NEAR(of(ShareBy::BodyMass, 0), 121.212121, 5e-7);
  EXPECT_NEAR(of(ShareBy::BodyMass, 1), 151.515152, 5e-7);
  EXPECT_NEAR(of(ShareBy::BodyMass, 2), 90.909091, 5e-7);
  EXPECT_NEAR(of(ShareBy::MetabolicMass, 0), 121.694662, 5e-7);
  EXPECT_NEAR(of(ShareBy::MetabolicMass, 1), 143.864632, 5e-7);
  EXPECT_NEAR(of(ShareBy::MetabolicMass, 2), 98.077069, 5e-7);
}

TEST(HeadShares, ByMassNeedsEveryMass) {
  const Masses masses = {quantity::Kilograms(4), std::nullopt};
  EXPECT_FALSE(headShares(ShareBy::BodyMass, masses));
  EXPECT_EQ(headShares(ShareBy::Equal, masses).value(), (std::vector<double>{0.5, 0.5}));
}

/// 100 g of kale (10 g dry matter, 200 mg Ca) and 20 g of crickets (6 g dry matter, 8 mg Ca), all eaten.
struct Shared {
  std::vector<diet::DietFood> foods = {foodOf("kale", 90, 200, 50), foodOf("crickets", 70, 40, 300)};
  EatenBowl bowl =
      eatenAsSeen(bowlOf({fed("kale", 100, AllEaten{}), fed("crickets", 20, AllEaten{}, "insects")}));
  Contents calcium = Contents::ofNutrient(foods, food::EnergyMethod::Given, food::nutrients::calcium());
  Contents dryMatter = Contents::ofDryMatter(foods);

  [[nodiscard]] GroupBounds bounds(const Masses& masses, std::optional<Ceiling> ceiling = {}) const {
    return headBounds(bowl.items, calcium, dryMatter, masses, ceiling);
  }
};

TEST(HeadBounds, NobodyEatsMoreThanTheBowl) {
  const GroupBounds bounds = Shared().bounds(kilograms({4, 5}));
  EXPECT_EQ(bounds.heads[0].low, 0.0);
  EXPECT_DOUBLE_EQ(bounds.heads[0].high, 208.0);
}

TEST(HeadBounds, OneAnimalAteItAll) {
  const GroupBounds bounds = Shared().bounds(kilograms({4}));
  EXPECT_DOUBLE_EQ(bounds.heads[0].low, 208.0);
  EXPECT_DOUBLE_EQ(bounds.heads[0].high, 208.0);
}

TEST(HeadBounds, ACeilingAHeadLeavesTheOthersTheRest) {
  // 16 g of dry matter among 300 g and 200 g animals at no more than 4 % of body mass: 12 g and 8 g.
  const GroupBounds bounds = Shared().bounds(kilograms({0.3, 0.2}), Ceiling{0.04});
  ASSERT_FALSE(bounds.defect);
  // The first at most: 10 g of kale (200 mg) and 2 of 6 g of crickets (8/3 mg).
  EXPECT_NEAR(bounds.heads[0].high, 200.0 + 8.0 / 3.0, 1e-9);
  // The second at most: 8 of 10 g of kale, 160 mg; so the first at least 48 mg.
  EXPECT_NEAR(bounds.heads[1].high, 160.0, 1e-9);
  EXPECT_NEAR(bounds.heads[0].low, 48.0, 1e-9);
  EXPECT_NEAR(bounds.heads[1].low, 208.0 - 200.0 - 8.0 / 3.0, 1e-9);
}

TEST(HeadBounds, CeilingsThatDoNotHoldTheBowlAreTold) {
  const GroupBounds bounds = Shared().bounds(kilograms({0.3, 0.2}), Ceiling{0.03});  // 9 + 6 g < 16 g
  EXPECT_EQ(bounds.defect, BoundsDefect::CeilingsTooLow);
  EXPECT_DOUBLE_EQ(bounds.heads[0].high, 208.0);
  EXPECT_EQ(Shared().bounds({quantity::Kilograms(0.3), std::nullopt}, Ceiling{0.04}).defect,
            BoundsDefect::MassUnknown);
}

RC_GTEST_PROP(HeadBoundsProperty, AnyWayOfSharingWithinTheCeilingsLiesWithinTheBounds, ()) {
  const Shared shared;
  const int heads = *rc::gen::inRange(2, 5);
  Masses masses;
  for (int i = 0; i < heads; ++i)
    masses.emplace_back(quantity::Kilograms(*rc::gen::inRange(50, 400) / 1000.0));
  // A way of sharing: each food by its own parts.
  const std::vector<double> contents = {200.0, 8.0};
  const std::vector<double> dryMatter = {10.0, 6.0};
  std::vector<double> got(masses.size());
  std::vector<double> dry(masses.size());
  for (std::size_t food = 0; food < contents.size(); ++food) {
    std::vector<double> parts;
    for (int i = 0; i < heads; ++i) parts.push_back(*rc::gen::inRange(0, 100) + 0.001);
    const double sum = std::accumulate(parts.begin(), parts.end(), 0.0);
    for (std::size_t i = 0; i < masses.size(); ++i) {
      got[i] += contents[food] * parts[i] / sum;
      dry[i] += dryMatter[food] * parts[i] / sum;
    }
  }
  double ceiling = 0.0;
  for (std::size_t i = 0; i < masses.size(); ++i)
    ceiling = std::max(ceiling, dry[i] / quantity::toGrams(*masses[i]).value());
  const GroupBounds bounds = shared.bounds(masses, Ceiling{ceiling * (1.0 + 1e-9)});
  RC_ASSERT(!bounds.defect);
  for (std::size_t i = 0; i < masses.size(); ++i) {
    RC_ASSERT(got[i] <= bounds.heads[i].high + 1e-6);
    RC_ASSERT(got[i] >= bounds.heads[i].low - 1e-6);
  }
}

}  // namespace
}  // namespace tarebowl::intake
