// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/learned_eating.h"

#include "core/transfer/intake_reader.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace tarebowl::transfer {

namespace {

constexpr std::chrono::days kLearnedFrom{56};

}  // namespace

Eaters eatersOn(const store::StoredGroup& group, quantity::Date day) {
  return {group.record.code, group.record.section, day};
}

std::vector<intake::EatenFraction> learnEating(const store::Collection& collection, const Eaters& eaters,
                                               std::span<const intake::FoodOfClass> foods) {
  const std::chrono::sys_days until = std::chrono::sys_days(eaters.day) - std::chrono::days(1);
  IntakeReader reader(collection, {});
  reader.turnTo(eaters.group, eaters.place);
  const auto read = reader.read(until - kLearnedFrom + std::chrono::days(1), until);
  std::vector<intake::EatenFraction> learned = intake::learnFractions(read.eaten, foods);
  std::erase_if(learned, [&](const intake::EatenFraction& entry) {
    return std::ranges::find(foods, entry.food, &intake::FoodOfClass::food) == foods.end();
  });
  return learned;
}

void countEaten(const store::Collection& collection, const Eaters& eaters,
                std::vector<diet::DietFood>& foods) {
  std::vector<intake::FoodOfClass> asked;
  asked.reserve(foods.size());
  for (const diet::DietFood& food : foods) asked.push_back({food.id, food.group});
  diet::BalanceProblem counted;
  counted.foods = std::move(foods);
  foods = intake::onWhatIsEaten(std::move(counted), learnEating(collection, eaters, asked)).foods;
}

void countEaten(diet::VersionContext& context, const std::vector<intake::EatenFraction>& fractions) {
  diet::BalanceProblem counted;
  for (const auto& [code, food] : context.foods) {
    counted.foods.push_back(food);
    counted.foods.back().id = code;
  }
  counted = intake::onWhatIsEaten(std::move(counted), fractions);
  for (diet::DietFood& food : counted.foods) {
    diet::DietFood& known = context.foods.at(food.id);
    food.id = known.id;
    known = std::move(food);
  }
}

diet::BalanceProblem countedEaten(diet::BalanceProblem problem,
                                  const std::vector<diet::PlaceInVersion>& places,
                                  const std::vector<intake::EatenFraction>& fractions) {
  std::vector<intake::EatenFraction> ofPlaces;
  for (std::size_t i = 0; i < std::min(problem.foods.size(), places.size()); ++i) {
    const auto found = std::ranges::find(fractions, places[i].food, &intake::EatenFraction::food);
    if (found == fractions.end()) continue;
    ofPlaces.push_back(*found);
    ofPlaces.back().food = problem.foods[i].id;
  }
  return intake::onWhatIsEaten(std::move(problem), ofPlaces);
}

}  // namespace tarebowl::transfer
