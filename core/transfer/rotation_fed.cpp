// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_reading.h"
#include "core/store/food_reading.h"
#include "core/transfer/intake_period.h"
#include "core/transfer/rotation_desk.h"

#include <algorithm>
#include <map>

namespace tarebowl::transfer {

namespace {

using diet::PlaceInVersion;
using quantity::Date;
using quantity::Grams;

/// What one bowl of the diet held of one food, and what was eaten of it where that is known; per animal.
struct FedFood {
  std::string food{};
  std::string meal{};
  Grams offered{};
  std::optional<Grams> eaten{};
};
using FedByDay = std::map<int, std::vector<FedFood>>;

FedByDay fedByDay(const store::Collection& collection, const RotationDesk& desk, Date last) {
  FedByDay fed;
  const std::string& group = desk.diet.group.group.record.code;
  const auto bowls = store::bowlsOfGroup(collection, group, desk.from, last);
  const auto intake = readIntake(collection, group, desk.from, last);
  if (!intake) return fed;
  for (std::size_t i = 0; i < bowls.size(); ++i) {
    if (bowls[i].diet != desk.diet.diet.record.code) continue;
    const double animals = std::max(1, bowls[i].animals);
    for (const intake::EatenItem& item : intake->eaten[i].items) {
      FedFood food{.food = item.food, .meal = bowls[i].meal, .offered = Grams(item.offered / animals)};
      if (item.eaten) food.eaten = Grams(std::max(0.0, item.eaten->value()) / animals);
      fed[diet::dayOfPeriod(desk.from, bowls[i].key.day)].push_back(std::move(food));
    }
  }
  return fed;
}

/// A food that the version does not have: it was fed, and no more of it is given. No rule of the rotation
/// asks for it.
std::optional<std::size_t> addFedFood(const store::Collection& collection, const FedFood& fed,
                                      RotationDesk& desk) {
  auto food = store::dietFood(collection, fed.food);
  if (!food) {
    if (std::ranges::find(desk.unknownFed, fed.food) == desk.unknownFed.end())
      desk.unknownFed.push_back(fed.food);
    return std::nullopt;
  }
  food->min = Grams(0);
  food->max = Grams(0);
  auto& rules = desk.problem.rules;
  rules.frequency.push_back(
      {.of = {.foods = {food->id}}, .longestRun = rules.days, .leastDays = 0, .mostDays = rules.days});
  if (auto& reference = desk.problem.base.reference) reference->emplace_back(0.0);
  desk.problem.base.foods.push_back(std::move(*food));
  desk.places.push_back({.food = fed.food, .meal = fed.meal});
  for (diet::FedDay& day : rules.fed) {
    day.fed.emplace_back(0.0);
    if (day.eaten) day.eaten->emplace_back(0.0);
  }
  return desk.places.size() - 1;
}

std::optional<std::size_t> placeOf(const RotationDesk& desk, const FedFood& fed) {
  const auto find = [&](auto&& matches) -> std::optional<std::size_t> {
    const auto place = std::ranges::find_if(desk.places, [&](const PlaceInVersion& p) {
      return !p.allowance && p.food == fed.food && matches(p);
    });
    if (place == desk.places.end()) return std::nullopt;
    return static_cast<std::size_t>(place - desk.places.begin());
  };
  if (const auto same = find([&](const PlaceInVersion& p) { return p.meal == fed.meal; })) return same;
  return find([](const PlaceInVersion&) { return true; });
}

/// What of a food's grams is eaten where nobody weighed it back.
Grams expected(const RotationDesk& desk, std::size_t food, Grams offered) {
  return offered * desk.problem.base.foods[food].eatenFraction;
}

diet::FedDay fromRecords(const store::Collection& collection, int number, const std::vector<FedFood>& foods,
                         RotationDesk& desk) {
  diet::FedDay day{.day = number, .fed = {}, .eaten = {}};
  for (const FedFood& fed : foods)
    if (!placeOf(desk, fed)) addFedFood(collection, fed, desk);
  day.fed.assign(desk.places.size(), Grams(0));
  diet::Diet eaten(desk.places.size(), Grams(0));
  for (const FedFood& fed : foods) {
    const auto food = placeOf(desk, fed);
    if (!food) continue;
    day.fed[*food] += fed.offered;
    eaten[*food] += fed.eaten.value_or(expected(desk, *food, fed.offered));
  }
  giveAllowances(desk, day.fed);
  for (std::size_t food = 0; food < desk.places.size(); ++food)
    if (desk.places[food].allowance) eaten[food] = expected(desk, food, day.fed[food]);
  if (desk.asEaten) day.eaten = std::move(eaten);
  return day;
}

}  // namespace

void takeFedDays(const store::Collection& collection, const diet::KeptRotation& planned, Date until,
                 RotationDesk& desk) {
  desk.problem.rules.fed.clear();
  const int over = std::clamp(diet::dayOfPeriod(desk.from, until), 0, desk.problem.rules.days);
  if (over == 0) return;
  const FedByDay fed = fedByDay(collection, desk, exchange::dateOfDay(desk.from, over - 1));
  const std::vector<diet::Diet> asPlanned = daysOf(desk, planned);
  for (int day = 0; day < over; ++day) {
    const auto recorded = fed.find(day);
    diet::FedDay made{.day = day, .fed = {}, .eaten = {}};
    if (recorded != fed.end()) {
      made = fromRecords(collection, day, recorded->second, desk);
    } else {
      made.fed = asPlanned[static_cast<std::size_t>(day)];
      made.fed.resize(desk.places.size());
    }
    desk.problem.rules.fed.push_back(std::move(made));
  }
}

}  // namespace tarebowl::transfer
