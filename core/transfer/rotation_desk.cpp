// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/rotation_desk.h"

#include "core/diet/locked.h"
#include "core/diet/rotation_standing.h"
#include "core/store/food_reading.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace tarebowl::transfer {

namespace {

using diet::KeptRotation;
using diet::PlaceInVersion;
using diet::PlannedCell;
using quantity::Date;
using quantity::Grams;

/// Locks of the calendar go in the place of those that the rules came with.
void takeLocks(const KeptRotation& kept, RotationDesk& desk) {
  desk.problem.rules.locked.clear();
  for (const PlannedCell& cell : kept.cells) {
    const auto food = diet::placeOf(desk.places, cell);
    if (cell.locked && food)
      desk.problem.rules.locked.push_back(
          {.day = cell.day, .food = desk.problem.base.foods[*food].id, .grams = cell.amount});
  }
}

bool isLocked(const RotationDesk& desk, int day, std::size_t food) {
  return std::ranges::any_of(desk.problem.rules.locked, [&](const diet::LockedCell& locked) {
    return locked.day == day && locked.food == desk.problem.base.foods[food].id;
  });
}

/// What is given unweighed comes each day: no rule on how often foods come speaks of it.
void freeAllowances(RotationDesk& desk) {
  diet::FoodFrequency rule;
  for (std::size_t food = 0; food < desk.places.size(); ++food)
    if (desk.places[food].allowance) rule.of.foods.push_back(desk.problem.base.foods[food].id);
  if (rule.of.foods.empty()) return;
  rule.longestRun = rule.mostDays = desk.problem.rules.days;
  rule.leastDays = 0;
  desk.problem.rules.frequency.push_back(std::move(rule));
}

}  // namespace

Date RotationDesk::until() const {
  return exchange::dateOfDay(from, problem.rules.days - 1);
}

void addEdibleParts(const store::Collection& collection, const std::vector<std::string>& codes,
                    diet::RotationProblem& problem) {
  std::vector<diet::PurchaseLoss> known;
  for (std::size_t food = 0; food < codes.size(); ++food) {
    const auto stored = store::findFood(collection, codes[food]);
    if (!stored) continue;
    diet::PurchaseLoss loss;
    loss.of.foods.push_back(problem.base.foods.at(food).id);
    loss.edible = stored->record.food.edibleFraction;
    known.push_back(std::move(loss));
  }
  auto& losses = problem.rules.purchase;
  losses.insert(losses.begin(), known.begin(), known.end());
}

RotationDesk layOutRotation(const store::Collection& collection, DeskDiet diet, const std::string& rules,
                            const exchange::RotationPeriod& asked, Date today) {
  RotationDesk desk;
  desk.problem.base = diet::withLocked(diet.made.problem, diet.made.amounts, diet.made.locked);
  const exchange::RotationRulesFile file =
      exchange::parseRotationRules(rules, "the rules of the rotation", desk.problem.base, asked);
  desk.from = file.from.value_or(today);
  desk.problem.rules = file.rules;
  desk.places = diet.made.places;
  desk.rules = rules;
  desk.diet = std::move(diet);
  freeAllowances(desk);
  std::vector<std::string> codes;
  for (const PlaceInVersion& place : desk.places) codes.push_back(place.food);
  addEdibleParts(collection, codes, desk.problem);
  return desk;
}

std::vector<diet::Diet> daysOf(const RotationDesk& desk, const KeptRotation& kept) {
  const std::vector<diet::DietFood>& foods = desk.problem.base.foods;
  std::vector<diet::Diet> days(static_cast<std::size_t>(desk.problem.rules.days), diet::Diet(foods.size()));
  for (const PlannedCell& cell : kept.cells)
    if (const auto food = diet::placeOf(desk.places, cell); food && cell.day < desk.problem.rules.days)
      days[static_cast<std::size_t>(cell.day)][*food] = cell.amount;
  for (diet::Diet& day : days) giveAllowances(desk, day);
  for (const diet::FedDay& fed : desk.problem.rules.fed) days[static_cast<std::size_t>(fed.day)] = fed.fed;
  return days;
}

void giveAllowances(const RotationDesk& desk, diet::Diet& day) {
  if (std::ranges::none_of(day, [](Grams grams) { return grams > Grams(0); })) return;
  for (std::size_t food = 0; food < day.size(); ++food)
    if (desk.places[food].allowance) day[food] = desk.problem.base.foods[food].min;
}

std::optional<RotationOnDesk> readRotation(const store::Collection& collection, store::RotationId id,
                                           Date today) {
  auto kept = store::findRotation(collection, id);
  if (!kept) return std::nullopt;
  const KeptRotation& rotation = kept->record;
  const auto versions = store::versionsOfDiet(collection, rotation.diet);
  const auto version = std::ranges::find_if(
      versions, [&](const auto& each) { return each.record.version.number == rotation.version; });
  auto diet = version == versions.end() ? std::nullopt : readDesk(collection, version->id, today);
  if (!diet) return std::nullopt;
  RotationOnDesk read{.kept = *kept};
  read.desk =
      layOutRotation(collection, std::move(*diet), rotation.rules, {rotation.days(), rotation.from}, today);
  read.desk.asEaten = rotation.asEaten;
  takeLocks(rotation, read.desk);
  takeFedDays(collection, rotation, rotation.plannedFrom, read.desk);
  read.days = daysOf(read.desk, rotation);
  return read;
}

diet::RotationPlan planOf(const RotationOnDesk& rotation) {
  const KeptRotation& kept = rotation.kept.record;
  diet::RotationPlan plan;
  plan.status = kept.isBalanced() ? diet::RotationStatus::Balanced : diet::RotationStatus::Compromise;
  plan.days = rotation.days;
  plan.period = kept.period;
  plan.daily = kept.daily;
  plan.wishes = kept.wishes;
  plan.objective = kept.objective;
  diet::RotationStanding standing = diet::standingOf(rotation.desk.problem, rotation.days);
  plan.periodBalance = std::move(standing.period);
  plan.dayBalances = std::move(standing.days);
  return plan;
}

KeptRotation keptRotation(const RotationDesk& desk, const diet::RotationPlan& plan, std::uint64_t seed,
                          Date plannedFrom) {
  KeptRotation kept{.diet = desk.diet.diet.record.code,
                    .version = desk.diet.version.record.version.number,
                    .from = desk.from,
                    .until = desk.until(),
                    .plannedFrom = plannedFrom,
                    .rules = desk.rules,
                    .seed = static_cast<long long>(seed),
                    .asEaten = desk.asEaten,
                    .period = plan.period,
                    .daily = plan.daily,
                    .wishes = plan.wishes,
                    .objective = plan.objective};
  for (std::size_t day = 0; day < plan.days.size(); ++day)
    for (std::size_t food = 0; food < desk.places.size(); ++food) {
      const PlaceInVersion& place = desk.places[food];
      const Grams grams = plan.days[day][food];
      const bool locked = isLocked(desk, static_cast<int>(day), food);
      if (place.allowance || (!(grams > Grams(0)) && !locked)) continue;
      kept.cells.push_back({.day = static_cast<int>(day),
                            .food = place.food,
                            .purpose = place.purpose,
                            .meal = place.meal,
                            .amount = grams,
                            .locked = locked});
    }
  return kept;
}

}  // namespace tarebowl::transfer
