// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/intake_period.h"

#include "core/intake/from_records.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/diet_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/food_reading.h"
#include "core/store/swap_verbs.h"
#include "core/transfer/group_facts.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::transfer {

namespace {

using quantity::Date;
using quantity::Grams;

/// The coarsest of 1 g, 0.1 g … 0.001 g of which the grams are a whole number.
double fineness(double grams, double step) {
  constexpr double kFinest = 1e-3;
  while (step > kFinest && std::abs(grams / step - std::round(grams / step)) > 1e-6) step /= 10.0;
  return step;
}

Grams stepOf(const std::vector<intake::Bowl>& bowls) {
  double step = 1.0;
  for (const intake::Bowl& bowl : bowls)
    for (const intake::BowlItem& item : bowl.items) {
      for (const intake::Weighing& weighing : item.weighings) step = fineness(weighing.actual.value(), step);
      for (const intake::Leftover& left : item.leftovers)
        if (left.left) step = fineness(left.left->value(), step);
    }
  return Grams(step);
}

/// Foods by their codes; each is read once.
class FoodReader {
 public:
  explicit FoodReader(const store::Collection& collection) : collection_(collection) {}

  const diet::DietFood* read(const std::string& code) {
    const auto [at, fresh] = foods_.try_emplace(code);
    if (fresh) at->second = store::dietFood(collection_, code);
    return at->second ? &*at->second : nullptr;
  }
  [[nodiscard]] const std::map<std::string, std::optional<diet::DietFood>>& all() const { return foods_; }

 private:
  const store::Collection& collection_;
  std::map<std::string, std::optional<diet::DietFood>> foods_;
};

std::vector<intake::WaterPan> pansOf(const store::Collection& collection, const IntakePeriod& period,
                                     const intake::FoodKindLookup& kindOf) {
  const int apart = intake::BorrowRule().daysApart;
  std::vector<intake::WaterPan> pans;
  for (const store::StoredControlPan& pan :
       store::controlPansBetween(collection, intake::dayOfNumber(intake::dayNumber(period.from) - apart),
                                 intake::dayOfNumber(intake::dayNumber(period.to) + apart)))
    if (pan.record.place == period.group.group.record.section)
      pans.push_back(intake::waterPan(pan.record, kindOf));
  return pans;
}

food::EnergyMethod energyMethodOf(const store::Collection& collection,
                                  const std::vector<intake::Bowl>& bowls) {
  for (auto bowl = bowls.rbegin(); bowl != bowls.rend(); ++bowl) {
    if (bowl->diet.empty()) continue;
    if (const auto fed = store::fedOn(collection, bowl->diet, bowl->key.day))
      return fed->record.version.energyMethod;
  }
  return food::EnergyMethod::ModifiedAtwater;
}

diet::BalanceProblem problemOf(const store::KnownGroup& group, std::vector<diet::DietFood> foods,
                               food::EnergyMethod method) {
  if (group.profile)
    return diet::profileProblem(*group.profile, groupFacts(group), std::move(foods), method).problem;
  diet::BalanceProblem problem;
  problem.eater = groupFacts(group).eater;
  problem.foods = std::move(foods);
  problem.energyMethod = method;
  return problem;
}

}  // namespace

std::vector<std::string> classesWithoutPans() {
  return {"supplement"};
}

std::optional<IntakePeriod> readIntake(const store::Collection& collection, const std::string& group,
                                       Date from, Date to) {
  auto known = store::knowGroup(collection, group, to);
  if (!known) return std::nullopt;
  IntakePeriod period{.group = std::move(*known), .from = from, .to = to};
  period.invented = period.group.group.record.invented;
  const std::vector<intake::Bowl> bowls = store::bowlsOfGroup(collection, group, from, to);
  FoodReader foods(collection);
  const Grams step = stepOf(bowls);
  const auto kindOf = [&](const std::string& code) {
    const diet::DietFood* food = foods.read(code);
    return intake::FoodKind{food == nullptr ? std::string() : food->group, step};
  };
  const std::string& place = period.group.group.record.section;
  period.fed.reserve(bowls.size());
  for (const intake::Bowl& bowl : bowls) period.fed.push_back(intake::fedBowl(bowl, place, kindOf));
  std::vector<diet::DietFood> knownFoods;
  for (const auto& [code, food] : foods.all()) {
    if (food)
      knownFoods.push_back(*food);
    else
      period.unknownFoods.push_back(code);
  }
  period.problem = problemOf(period.group, std::move(knownFoods), energyMethodOf(collection, bowls));
  const auto pans = pansOf(collection, period, kindOf);
  period.pans = pans.size();
  const intake::PanBook book(pans, {}, classesWithoutPans());
  period.eaten.reserve(period.fed.size());
  for (const intake::FedBowl& bowl : period.fed)
    period.eaten.push_back(intake::eatenFrom(bowl, book, static_cast<std::uint32_t>(period.eaten.size())));
  return period;
}

intake::Contents contentsOf(const IntakePeriod& period, food::NutrientId nutrient) {
  return intake::Contents::ofNutrient(period.problem.foods, period.problem.energyMethod, nutrient);
}

}  // namespace tarebowl::transfer
