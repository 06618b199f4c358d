// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/time_of_sheet.h"
#include "core/store/opening.h"
#include "tests/core/store/feeding_days.h"
#include "tests/core/store/larder.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace tarebowl::store {
namespace {

using quantity::Grams;

constexpr int kGroups = 40;
constexpr int kItems = 10;
constexpr int kDays = 60;

std::vector<intake::Bowl> bowlsOf(quantity::Date day) {
  std::vector<intake::Bowl> bowls;
  for (int group = 0; group < kGroups; ++group) {
    intake::Bowl bowl{.key = {fmt::format("g{}", group), day, 1},
                      .meal = "morning",
                      .label = fmt::format("Group {}, morning", group),
                      .animals = 3};
    for (int item = 1; item <= kItems; ++item)
      bowl.items.push_back({.item = item,
                            .food = fmt::format("f{}", (group * 7 + item) % 60),
                            .planned = Grams(5.0 + 3.7 * item + group),
                            .preparation = "chopped"});
    bowls.push_back(std::move(bowl));
  }
  return bowls;
}

/// As a kitchen writes: the sheet, each bowl as it is weighed, and the next day what is left.
void writeDay(Collection& collection, quantity::Date day) {
  const auto at = [&](long long seconds) { return Author{"Keeper A", intake::timeFrom(day, seconds)}; };
  const auto bowls = bowlsOf(day);
  openSheet(collection, "Small Mammals", day, bowls, at(6 * 3600));
  long long now = 7 * 3600;
  for (const intake::Bowl& bowl : bowls) {
    std::vector<WeightRead> weights;
    std::vector<LeftoverFound> left;
    for (const intake::BowlItem& item : bowl.items) {
      weights.push_back({{bowl.key, item.item}, item.planned + Grams(0.4)});
      left.push_back(
          {{bowl.key, item.item}, intake::LeftoverKind::Weighed, Grams(0.3 * item.planned.value()), {}});
    }
    weighIn(collection, weights, at(now += 60));
    noteLeftovers(collection, left, at(now + 25 * 3600));
  }
}

double sizeOf(Collection& collection) {
  guarded(collection.file(), [&] { collection.inner().sql() << "PRAGMA wal_checkpoint(TRUNCATE)"; });
  return static_cast<double>(std::filesystem::file_size(collection.file()));
}

TEST(FeedingSize, ALineOfAFoodTakesAtMostSeventyBytesOfTheFileWithWhoWhenLeftoversAndItsShareOfTheRest) {
  Herd herd;
  for (int group = 0; group < kGroups; ++group)
    addGroup(herd.collection, lemurGroup(fmt::format("g{}", group)), kKeeper);
  for (int food = 0; food < 60; ++food) addFood(herd.collection, plain(fmt::format("f{}", food)), kKeeper);
  const double before = sizeOf(herd.collection);
  for (int day = 0; day < kDays; ++day) writeDay(herd.collection, intake::dayOfNumber(20'000 + day));
  const double lines = kGroups * kItems * kDays;
  const double bytes = (sizeOf(herd.collection) - before) / lines;
  RecordProperty("bytes_a_line", std::to_string(bytes));
  EXPECT_LE(bytes, 70.0);
}

}  // namespace
}  // namespace tarebowl::store
