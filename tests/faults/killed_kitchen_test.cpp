// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "tests/core/store/herd.h"
#include "tests/faults/child.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace tarebowl::faults {
namespace {

namespace fs = std::filesystem;
using namespace tarebowl::store;
using quantity::Grams;
using std::chrono::microseconds;

constexpr int kDeaths = 30;
constexpr int kFoods = 8;
const OpenOptions kReadThrough{.check = OpenOptions::Check::Always};

intake::Bowl bowlOf(int day) {
  intake::Bowl bowl{.key = {"family", intake::dayOfNumber(20'000 + day), 1}, .label = "Family", .animals = 5};
  for (int item = 1; item <= kFoods; ++item)
    bowl.items.push_back({.item = item, .food = "food " + std::to_string(item), .planned = Grams(10 + item)});
  return bowl;
}

/// Opens the sheet of day after day and weighs it in without end; tells each day when all of it is written.
void feedOnAndOn(const fs::path& file, int first, const Child::Tell& tell) {
  Collection collection = Collection::open(file, kNow);
  tell(0);
  for (int day = first;; ++day) {
    const std::vector<intake::Bowl> bowls{bowlOf(day)};
    openSheet(collection, "Small Mammals", bowls[0].key.day, bowls, kKeeper);
    std::vector<WeightRead> weights;
    for (const intake::BowlItem& item : bowls[0].items)
      weights.push_back({{bowls[0].key, item.item}, item.planned});
    weighIn(collection, weights, kKeeper);
    tell(day);
  }
}

std::size_t weighedOf(const Collection& collection, int day) {
  const auto bowl = findBowl(collection, bowlOf(day).key);
  if (!bowl) return 0;
  EXPECT_EQ(bowl->items.size(), static_cast<std::size_t>(kFoods));  // a sheet is there as a whole
  return static_cast<std::size_t>(std::ranges::count_if(
      bowl->items, [](const intake::BowlItem& item) { return !item.weighings.empty(); }));
}

TEST(KilledKitchen, EveryWeightThatWasTakenIsThereAfterEveryDeathAndNoneByHalves) {
  const OwnFolder folder;
  const fs::path file = folder / "kitchen.tarebowl";
  {
    Collection collection = Collection::create(file, kKeeper);
    addSpecies(collection, lemurSpecies(), kKeeper);
    addGroup(collection, lemurGroup("family"), kKeeper);
  }
  std::mt19937 random(20261126);
  std::uniform_int_distribution<int> delay(0, 60'000);
  int next = 1;
  int days = 0;
  for (int death = 0; death < kDeaths; ++death) {
    Child child([&](const Child::Tell& tell) { feedOnAndOn(file, next, tell); });
    child.killAfter(microseconds(delay(random)));
    const std::vector<int> told = child.told();
    const Collection collection = Collection::open(file, kNow, kReadThrough);
    for (const int day : told) {
      if (day == 0) continue;
      ASSERT_EQ(weighedOf(collection, day), static_cast<std::size_t>(kFoods)) << day << " at death " << death;
      ++days;
    }
    const int last = std::max(next - 1, *std::ranges::max_element(told));
    const std::size_t half = weighedOf(collection, last + 1);  // the one it died over
    ASSERT_TRUE(half == 0 || half == static_cast<std::size_t>(kFoods)) << half;
    next = last + 2;
  }
  EXPECT_GT(days, 5);  // the children did live to write
}

}  // namespace
}  // namespace tarebowl::faults
