// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/judged_problem.h"

#include "core/store/diet_reading.h"
#include "core/store/reading.h"
#include "core/transfer/group_facts.h"

#include <utility>

namespace tarebowl::transfer {

food::EnergyMethod energyMethodOf(const store::Collection& collection, const IntakeReader::Stretch& read) {
  const auto fed = read.fedOn ? store::energyMethodFed(collection, read.diet, *read.fedOn) : std::nullopt;
  return fed.value_or(food::EnergyMethod::ModifiedAtwater);
}

void askForIntake(const store::Collection& collection, IntakeReader& reader, quantity::Date from,
                  quantity::Date to) {
  const store::CountedBowlReader::Fed fed = reader.askFor(from, to);
  if (!fed.lastDay) return;
  store::askAhead(collection, [&] { return store::energyMethodFed(collection, fed.diet, *fed.lastDay); });
}

diet::BalanceProblem judgedProblem(const store::KnownGroup& group, std::vector<diet::DietFood> foods,
                                   food::EnergyMethod method) {
  if (group.profile)
    return diet::profileProblem(*group.profile, groupFacts(group), std::move(foods), method).problem;
  diet::BalanceProblem problem;
  problem.eater = groupFacts(group).eater;
  problem.foods = std::move(foods);
  problem.energyMethod = method;
  return problem;
}

std::vector<diet::DietFood> foodsKnown(const IntakeReader& reader) {
  std::vector<diet::DietFood> foods;
  for (const auto& [code, food] : reader.foods())
    if (food) foods.push_back(*food);
  return foods;
}

std::vector<diet::DietFood> foodsKnownOrNot(const IntakeReader& reader) {
  std::vector<diet::DietFood> foods;
  for (const auto& [code, food] : reader.foods()) {
    foods.push_back(food.value_or(diet::DietFood{}));
    foods.back().id = code;
  }
  return foods;
}

}  // namespace tarebowl::transfer
