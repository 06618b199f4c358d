// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/fed_zoo.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/animal_verbs.h"
#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"
#include "core/store/together.h"
#include "core/store/verbs.h"
#include "tests/bench/bench_files.h"
#include "tests/bench/zoo_diets.h"
#include "tests/bench/zoo_herd.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::bench {

namespace {

namespace fs = std::filesystem;
using quantity::Grams;

constexpr int kFoods = 200;
constexpr int kHouses = 12;
constexpr int kClasses = 8;
constexpr int kSwaps = 5;  // a day, in bowls that change from day to day
constexpr int kSwappedItem = 1;
constexpr int kFirstDay = 17'000;  // 2016-07-18

int numberFrom(const char* variable, int otherwise) {
  const char* const told = std::getenv(variable);
  return told != nullptr ? std::atoi(told) : otherwise;
}

std::string foodCode(int food) {
  return fmt::format("f{}", food);
}

std::string className(int number) {
  return fmt::format("class {}", number % kClasses);
}

std::string house(int number) {
  return fmt::format("house {}", number % kHouses);
}

double drawn(std::mt19937& random, double low, double high) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

food::Sample analysis(std::mt19937& random) {
  food::Sample sample{.source = "made up"};
  const auto add = [&](food::NutrientId nutrient, double low, double high) {
    const double amount = drawn(random, low, high);
    sample.values.push_back(
        {.nutrient = nutrient, .amount = quantity::AsFedContent(amount), .sd = 0.1 * amount});
  };
  add(food::nutrients::water(), 60.0, 90.0);
  add(food::nutrients::energy(), 20.0, 150.0);
  add(food::nutrients::protein(), 1.0, 10.0);
  add(food::nutrients::calcium(), 10.0, 200.0);
  add(food::nutrients::phosphorus(), 10.0, 200.0);
  return sample;
}

store::Author keeperAt(int day, int hour) {
  return {fmt::format("Keeper {}", day % 4), intake::timeFrom(intake::dayOfNumber(day), hour * 3600)};
}

/// The groups of the day whose first food was not there.
bool isSwapped(int group, int day) {
  return (group + day) % groups() < kSwaps;
}

void swapFoods(store::Collection& collection, int day, const std::vector<intake::Bowl>& bowls) {
  for (int group = 0; group < groups(); ++group) {
    if (!isSwapped(group, day)) continue;
    const intake::Bowl& bowl = bowls[static_cast<std::size_t>(group)];
    store::addSwap(collection,
                   {.instead = {bowl.key, kSwappedItem},
                    .given = {{foodOfItem(group, kItems + 1), bowl.items.front().planned}},
                    .why = "not delivered"},
                   keeperAt(day, 7));
  }
}

void noteDay(store::Collection& collection, int day, const std::vector<intake::Bowl>& bowls,
             std::mt19937& random) {
  std::vector<store::WeightRead> weights;
  std::vector<store::LeftoverFound> left;
  for (std::size_t group = 0; group < bowls.size(); ++group) {
    const intake::Bowl& bowl = bowls[group];
    const bool swapped = isSwapped(static_cast<int>(group), day);
    for (const intake::BowlItem& item : bowl.items) {
      const bool wentIn = !swapped || item.item != kSwappedItem;
      const intake::ItemKey key{bowl.key, wentIn ? item.item : kItems + 1};
      weights.push_back({key, item.planned + Grams(0.1 * static_cast<double>(random() % 5))});
      left.push_back({key,
                      intake::LeftoverKind::Weighed,
                      item.planned * (0.01 * static_cast<double>(random() % 60)),
                      {}});
    }
  }
  store::weighIn(collection, weights, keeperAt(day, 8));
  store::noteLeftovers(collection, left, keeperAt(day, 33));
}

/// The sheet, its weights, what was left of it, and a pan in each house: of another class each day.
void writeDay(store::Collection& collection, int day, std::mt19937& random) {
  auto bowls = sheetOf(day, random);
  for (std::size_t group = 0; group < bowls.size(); ++group) {
    bowls[group].diet = dietCode(static_cast<int>(group));
    bowls[group].version = versionOnDay(day - storedDay(0));
  }
  store::openSheet(collection, "made", intake::dayOfNumber(day), bowls, keeperAt(day, 6));
  swapFoods(collection, day, bowls);
  noteDay(collection, day, bowls, random);
  for (int number = 0; number < kHouses; ++number)
    store::addControlPan(collection,
                         {.place = house(number),
                          .day = intake::dayOfNumber(day),
                          .foodClass = className(day + number),
                          .start = Grams(100),
                          .end = Grams(drawn(random, 80.0, 98.0)),
                          .who = "Keeper"},
                         keeperAt(day, 33));
}

}  // namespace

int days() {
  constexpr int kTenYears = 3652;
  return numberFrom("TAREBOWL_FEEDING_DAYS", kTenYears);
}

int fedDays() {
  return numberFrom("TAREBOWL_FED_DAYS", days());
}

int groups() {
  constexpr int kZoo = 300;
  return numberFrom("TAREBOWL_FEEDING_GROUPS", kZoo);
}

double lines() {
  return static_cast<double>(groups()) * kItems * std::min(days(), fedDays());
}

std::string groupCode(int group) {
  return fmt::format("g{:03}", group);
}

std::string foodOfItem(int group, int item) {
  return foodCode((group * 7 + item * 3) % kFoods);
}

quantity::Date dayAt(int number) {
  return intake::dayOfNumber(storedDay(number));
}

int storedDay(int number) {
  return kFirstDay + number;
}

std::vector<intake::Bowl> sheetOf(int day, std::mt19937& random) {
  std::vector<intake::Bowl> bowls;
  for (int group = 0; group < groups(); ++group) {
    intake::Bowl bowl{.key = {groupCode(group), intake::dayOfNumber(day), 1},
                      .meal = "morning",
                      .label = groupCode(group) + ", morning",
                      .animals = animalsOfGroup(group)};
    for (int item = 1; item <= kItems; ++item)
      bowl.items.push_back({.item = item,
                            .food = foodOfItem(group, item),
                            .planned = Grams(0.5 * static_cast<double>(1 + random() % 400)),
                            .preparation = "chopped"});
    bowls.push_back(std::move(bowl));
  }
  return bowls;
}

store::Collection unfedZoo(const fs::path& file) {
  store::Collection collection = newCollection(file);
  std::mt19937 random(20260102);
  store::together(collection, [&] {
    addKinds(collection);
    for (int group = 0; group < groups(); ++group)
      store::addGroup(collection,
                      {.code = groupCode(group),
                       .name = groupCode(group),
                       .species = speciesOfGroup(group),
                       .section = house(group),
                       .profile = profileOfGroup(group)},
                      kBench);
    for (int food = 0; food < kFoods; ++food) {
      const store::Written added = store::addFood(
          collection, {.food = {.code = foodCode(food), .name = foodCode(food), .group = className(food)}},
          kBench);
      store::addSample(collection, store::FoodId{added.id}, analysis(random), kBench);
    }
  });
  return collection;
}

const fs::path& fedZoo() {
  static const fs::path file = [] {
    const fs::path name = workFile(fmt::format("fed-{}-{}-{}.tarebowl", groups(), days(), fedDays()));
    if (fs::exists(name)) return name;
    const fs::path growing = workFile("feeding.tarebowl");
    {
      store::Collection collection = unfedZoo(growing);
      addHerd(collection);
      addDiets(collection);
      std::mt19937 random(20260101);
      for (int day = std::max(0, days() - fedDays()); day < days(); ++day)
        store::together(collection, [&] { writeDay(collection, storedDay(day), random); });
    }
    fs::rename(growing, name);
    return name;
  }();
  return file;
}

}  // namespace tarebowl::bench
