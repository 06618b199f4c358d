// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/zoo_intake.h"

#include "core/diet/supply.h"
#include "core/store/animal_reading.h"
#include "core/store/reading.h"
#include "core/transfer/judged_problem.h"

#include <algorithm>
#include <map>
#include <unordered_map>
#include <utility>

namespace tarebowl::transfer {

namespace {

struct FoodSum {
  double offered = 0.0;
  double eaten = 0.0;
};

/// One group's days added up by food, before it is asked what the foods hold.
struct GroupSum {
  GroupIntake group{};
  food::EnergyMethod method = food::EnergyMethod::ModifiedAtwater;
  std::unordered_map<std::string, FoodSum> foods{};
};

bool isKnown(std::span<const intake::EatenBowl> day) {
  return std::ranges::all_of(day, [](const intake::EatenBowl& bowl) {
    return std::ranges::all_of(bowl.items,
                               [](const intake::EatenItem& item) { return item.eaten.has_value(); });
  });
}

void addDay(GroupSum& sum, std::span<const intake::EatenBowl> day) {
  ++sum.group.days;
  sum.group.bowls += day.size();
  if (!isKnown(day)) return;
  ++sum.group.daysKnown;
  int animals = 1;
  for (const intake::EatenBowl& bowl : day) {
    animals = std::max(animals, bowl.animals);
    for (const intake::EatenItem& item : bowl.items) {
      FoodSum& food = sum.foods[item.food];
      food.offered += item.offered;
      food.eaten += item.eaten->value();
      sum.group.eatenGrams += item.eaten->value();
    }
  }
  sum.group.animalDays += animals;
}

void addDays(GroupSum& sum, std::span<const intake::EatenBowl> bowls) {
  for (std::size_t first = 0; first < bowls.size();) {
    std::size_t end = first;
    while (end < bowls.size() && bowls[end].day == bowls[first].day) ++end;
    addDay(sum, bowls.subspan(first, end - first));
    first = end;
  }
}

/// What a gram of each food holds of each nutrient, for one way of estimating energy.
class Larder {
 public:
  Larder(std::span<const diet::DietFood> foods, food::EnergyMethod method,
         std::span<const food::NutrientId> nutrients) {
    for (std::size_t i = 0; i < foods.size(); ++i) places_.emplace(foods[i].id, static_cast<Eigen::Index>(i));
    const diet::FoodList list(foods, method);
    for (const food::NutrientId nutrient : nutrients)
      supplies_.push_back(diet::nutrientSupply(list, nutrient));
  }

  void fill(GroupSum& sum) const {
    for (const diet::Supply& supply : supplies_) sum.group.nutrients.push_back(nutrientOf(sum, supply));
  }

 private:
  [[nodiscard]] NutrientOfGroup nutrientOf(const GroupSum& sum, const diet::Supply& supply) const {
    NutrientOfGroup total;
    double known = 0.0;
    double all = 0.0;
    double offered = 0.0;
    double eaten = 0.0;
    for (const auto& [code, grams] : sum.foods) {
      const Eigen::Index place = places_.at(code);
      all += std::max(0.0, grams.eaten);
      if (!supply.known[place]) continue;
      known += std::max(0.0, grams.eaten);
      offered += grams.offered * supply.perGram[place];
      eaten += grams.eaten * supply.perGram[place];
    }
    if (sum.group.daysKnown == 0) return total;
    total.coverage = all > 0.0 ? known / all : 1.0;
    if (!(total.coverage > 0.0)) return total;
    total.offered = offered / sum.group.animalDays;
    total.eaten = eaten / sum.group.animalDays;
    return total;
  }

  std::unordered_map<std::string, Eigen::Index> places_;
  std::vector<diet::Supply> supplies_;
};

std::vector<store::StoredGroup> groupsBySection(const store::Collection& collection) {
  std::vector<store::StoredGroup> groups = store::listGroups(collection);
  std::ranges::stable_sort(groups, {}, [](const store::StoredGroup& group) { return group.record.section; });
  return groups;
}

}  // namespace

std::vector<GroupIntake> readZooIntake(const store::Collection& collection, quantity::Date from,
                                       quantity::Date to, std::span<const food::NutrientId> nutrients) {
  std::vector<GroupSum> sums;
  IntakeReader reader(collection, nutrients);
  const std::vector<store::StoredGroup> all = groupsBySection(collection);
  if (store::gathers(collection))
    for (const store::StoredGroup& group : all) {
      reader.turnTo(group.record.code, group.record.section);
      askForIntake(collection, reader, from, to);
    }
  for (const store::StoredGroup& group : all) {
    reader.turnTo(group.record.code, group.record.section);
    const IntakeReader::Stretch read = reader.read(from, to);
    if (read.eaten.empty()) continue;
    GroupSum& sum = sums.emplace_back();
    sum.group = {.group = group.record.code, .name = group.record.name, .section = group.record.section};
    sum.method = energyMethodOf(collection, read);
    addDays(sum, read.eaten);
  }
  const std::vector<diet::DietFood> foods = foodsKnownOrNot(reader);
  std::map<food::EnergyMethod, Larder> larders;
  std::vector<GroupIntake> groups;
  for (GroupSum& sum : sums) {
    larders.try_emplace(sum.method, foods, sum.method, nutrients).first->second.fill(sum);
    groups.push_back(std::move(sum.group));
  }
  return groups;
}

}  // namespace tarebowl::transfer
