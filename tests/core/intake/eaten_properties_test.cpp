// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/daily_intake.h"
#include "tests/core/intake/feeding.h"
#include "tests/core/intake/simulated_feeding.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace tarebowl::intake {
namespace {

using namespace testing;

/// Grams to the tenth, so that no sum depends on the last digit.
double drawGrams(int most) {
  return *rc::gen::inRange(0, most * 10) / 10.0;
}

FedItem drawItem(int number) {
  FedItem item = fed("food " + std::to_string(number), 0.1 + drawGrams(300), NotWeighed{},
                     *rc::gen::element<std::string>("greens", "roots", "insects"));
  switch (*rc::gen::inRange(0, 4)) {
    case 0:
      item.remains = AllEaten{};
      break;
    case 1:
      item.remains = weighed(drawGrams(300), 1.0);
      break;
    case 2:
      item.remains = InRemainder{*rc::gen::inRange(0, 100) / 100.0};
      break;
    default:
      break;
  }
  if (*rc::gen::inRange(0, 5) == 0) item.loss = Loss{LossKind::Stolen, quantity::Grams(drawGrams(20))};
  return item;
}

FedBowl drawBowl() {
  FedBowl bowl = bowlOf({});
  const int foods = *rc::gen::inRange(1, 7);
  for (int i = 0; i < foods; ++i) bowl.items.push_back(drawItem(i));
  if (*rc::gen::inRange(0, 4) > 0) bowl.remainder = weighed(drawGrams(200), 1.0);
  return bowl;
}

PanBook drawPans() {
  const double end = 30.0 + drawGrams(120);  // losses and gains
  const std::vector<WaterPan> pans = {pan(100, end, day("2026-09-01"), "kale", "greens"),
                                      pan(100, end + 3.0, day("2026-08-30"), "beet", "roots")};
  return PanBook(pans);
}

RC_GTEST_PROP(EatenProperty, OfferedIsEatenLeftoverWaterAndWhatWasLost, ()) {
  const FedBowl bowl = drawBowl();
  const EatenBowl eaten = eatenFrom(bowl, drawPans(), 1);
  RC_ASSERT(eaten.items.size() == bowl.items.size());
  for (const EatenItem& item : eaten.items) {
    if (!item.eaten) continue;
    const double water = *item.leftAsOffered - *item.left;  // what the leftover lost since it was offered
    const double sum = item.eaten->value() + *item.left + water + item.spilled + item.stolen;
    RC_ASSERT(std::abs(sum - item.offered) < 1e-9 * (1.0 + item.offered));
  }
}

RC_GTEST_PROP(EatenProperty, BelowNothingIsAlwaysReported, ()) {
  const EatenBowl eaten = eatenFrom(drawBowl(), drawPans(), 1);
  for (std::size_t i = 0; i < eaten.items.size(); ++i) {
    const bool reported = std::ranges::any_of(eaten.findings, [&](const Finding& finding) {
      return finding.item == i && finding.kind == FindingKind::LeftoverAboveOffered;
    });
    RC_ASSERT(reported == (eaten.items[i].eaten && eaten.items[i].eaten->value() < 0.0));
  }
}

RC_GTEST_PROP(EatenProperty, WhatIsNotKnownSaysWhyAndHasBounds, ()) {
  const EatenBowl eaten = eatenFrom(drawBowl(), drawPans(), 1);
  for (std::size_t i = 0; i < eaten.items.size(); ++i) {
    if (eaten.items[i].eaten) continue;
    RC_ASSERT(std::ranges::find(eaten.findings, i, &Finding::item) != eaten.findings.end());
    RC_ASSERT(eaten.items[i].atLeast >= 0.0);
    RC_ASSERT(eaten.items[i].atLeast <= eaten.items[i].atMost + 1e-9);
    RC_ASSERT(eaten.items[i].atMost <= eaten.items[i].offered);
  }
}

/// How often intervals of 95 % (1.96 standard deviations) hold the truth.
struct Cover {
  int inside = 0;
  int all = 0;
  void see(double estimate, double sd, double truth) {
    ++all;
    inside += std::abs(estimate - truth) <= 1.959964 * sd ? 1 : 0;
  }
  [[nodiscard]] double share() const { return static_cast<double>(inside) / all; }
};

World leaves() {
  return {
      .foods = {{"kale", "greens", 120, 0.5}, {"endive", "greens", 80, 1.0}, {"chard", "greens", 60, 0.3}}};
}

// Several thousand intervals: their share scatters by less than 0.005, but days share their pans, so that the
// claim of 0.95 is tested within 0.02.
TEST(SimulatedFeeding, IntervalsOfWhatWasEatenHoldTheTruthAsOftenAsTheyClaim) {
  std::mt19937 random(20261126);
  Cover cover;
  const auto days = feed(leaves(), 2000, random);
  const PanBook pans(pansOf(days));
  std::uint32_t serial = 0;
  for (const SimulatedDay& day : days) {
    const EatenBowl eaten = eatenFrom(day.bowl, pans, serial++);
    for (std::size_t i = 0; i < day.eaten.size(); ++i)
      cover.see(eaten.items[i].eaten->value(), eaten.items[i].eaten->sd(), day.eaten[i]);
  }
  EXPECT_NEAR(cover.share(), 0.95, 0.02);
}

TEST(SimulatedFeeding, BorrowedPansWidenTheIntervalsAsTheyMust) {
  std::mt19937 random(7);
  World world = leaves();
  world.panMissing = 0.6;
  Cover borrowed;
  const auto days = feed(world, 3000, random);
  const PanBook pans(pansOf(days));
  std::uint32_t serial = 0;
  for (const SimulatedDay& day : days) {
    const EatenBowl eaten = eatenFrom(day.bowl, pans, serial++);
    for (std::size_t i = 0; i < day.eaten.size(); ++i)
      if (eaten.items[i].water && isBorrowed(eaten.items[i].water->from))
        borrowed.see(eaten.items[i].eaten->value(), eaten.items[i].eaten->sd(), day.eaten[i]);
  }
  EXPECT_GT(borrowed.all, 2000);
  EXPECT_NEAR(borrowed.share(), 0.95, 0.02);
}

TEST(SimulatedFeeding, UncorrectedIntakeIsTooHighAndTheCorrectedIsNot) {
  std::mt19937 random(11);
  const auto days = feed(leaves(), 1000, random);
  const PanBook pans(pansOf(days));
  double truth = 0.0;
  double corrected = 0.0;
  double uncorrected = 0.0;
  std::uint32_t serial = 0;
  for (const SimulatedDay& day : days) {
    const EatenBowl eaten = eatenFrom(day.bowl, pans, serial++);
    for (std::size_t i = 0; i < day.eaten.size(); ++i) {
      truth += day.eaten[i];
      corrected += eaten.items[i].eaten->value();
      uncorrected += eaten.items[i].offered - *eaten.items[i].left;
    }
  }
  EXPECT_NEAR(corrected / truth, 1.0, 0.01);
  EXPECT_GT(uncorrected / truth, 1.1);
}

}  // namespace
}  // namespace tarebowl::intake
