// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/study_report.h"

#include "core/intake/student.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <set>

namespace tarebowl::intake {

namespace {

double commonSdOf(const PeriodIntake& period) {
  return period.meanPerDay ? period.meanPerDay->sd(Origin::Composition) : 0.0;
}

/// The bowls with all of one food kept and all else taken out, so that days without it count as 0.
std::vector<EatenBowl> only(std::span<const EatenBowl> bowls, const std::string& food) {
  std::vector<EatenBowl> kept;
  for (const EatenBowl& bowl : bowls) {
    EatenBowl& copy = kept.emplace_back();
    copy.day = bowl.day;
    std::ranges::copy_if(bowl.items, std::back_inserter(copy.items),
                         [&](const EatenItem& item) { return item.food == food; });
  }
  return kept;
}

void add(FoodReport& report, const EatenItem& item) {
  if (!item.eaten) {
    ++report.bowlsNotKnown;
    return;
  }
  ++report.bowls;
  report.bowlsEstimated += item.estimated ? 1 : 0;
  report.offered += item.offered;
  report.left += item.left.value_or(0.0);
  report.leftAsOffered += item.leftAsOffered.value_or(item.left.value_or(0.0));
  report.lost += item.spilled + item.stolen;
  report.eaten += item.eaten->value();
}

/// Grams are grams, whether the food's composition is known or not.
Contents massOf(std::span<const FoodReport> reports) {
  std::vector<diet::DietFood> foods;
  foods.reserve(reports.size());
  for (const FoodReport& report : reports) foods.emplace_back().id = report.food;
  return Contents::ofMass(foods);
}

std::vector<FoodReport> foodReports(std::span<const EatenBowl> bowls, double confidence) {
  std::vector<FoodReport> reports;
  for (const EatenBowl& bowl : bowls)
    for (const EatenItem& item : bowl.items) {
      auto found = std::ranges::find(reports, item.food, &FoodReport::food);
      if (found == reports.end()) found = reports.insert(found, {.food = item.food});
      add(*found, item);
    }
  const Contents mass = massOf(reports);
  for (FoodReport& report : reports)
    report.eatenPerDay = meanOfDays(dailyIntake(only(bowls, report.food), mass), confidence);
  return reports;
}

/// How many share the bowls of each day.
std::map<quantity::Date, int> animalsByDay(std::span<const EatenBowl> bowls) {
  std::map<quantity::Date, int> animals;
  for (const EatenBowl& bowl : bowls) {
    int& most = animals[bowl.day];
    most = std::max(most, bowl.animals);
  }
  return animals;
}

/// Grams per animal and day of each food of the problem. animalDays: one for each animal on each day.
template <class Amount>
diet::Balance balanceOf(diet::BalanceProblem problem, std::span<const FoodReport> foods, double animalDays,
                        Amount amount) {
  diet::Diet grams;
  for (diet::DietFood& food : problem.foods) {
    food.eatenFraction = 1.0;
    const auto found = std::ranges::find(foods, food.id, &FoodReport::food);
    grams.emplace_back(found == foods.end() ? 0.0 : std::max(0.0, amount(*found)) / animalDays);
  }
  return diet::balance(problem, grams);
}

/// The days on which everything is known: a mean of others would count what is missing as nothing.
std::vector<EatenBowl> knownDays(std::span<const EatenBowl> bowls) {
  std::set<quantity::Date> unknown;
  for (const EatenBowl& bowl : bowls)
    for (const EatenItem& item : bowl.items)
      if (!item.eaten) unknown.insert(bowl.day);
  std::vector<EatenBowl> known;
  std::ranges::copy_if(bowls, std::back_inserter(known),
                       [&](const EatenBowl& bowl) { return !unknown.contains(bowl.day); });
  return known;
}

}  // namespace

std::optional<MeanOfDays> meanOfDays(std::span<const DayIntake> days, double confidence) {
  const PeriodIntake period = overPeriod(days);
  if (!period.meanPerDay) return std::nullopt;
  MeanOfDays mean;
  mean.mean = period.meanPerDay->value();
  mean.days = period.known;
  mean.dayToDaySd = period.dayToDaySd;
  mean.commonSd = commonSdOf(period);
  if (!mean.dayToDaySd) return mean;
  const double ofDays = meanHalfWidth(*mean.dayToDaySd, static_cast<double>(mean.days), confidence);
  const double ofAll = studentQuantile((1.0 + confidence) / 2.0, 1e6) * mean.commonSd;
  const double half = std::hypot(ofDays, ofAll);
  mean.interval = Interval{mean.mean - half, mean.mean + half};
  return mean;
}

StudyReport reportStudy(const diet::BalanceProblem& problem, std::span<const EatenBowl> bowls,
                        std::span<const food::NutrientId> nutrients, double confidence) {
  StudyReport report;
  if (bowls.empty()) return report;
  report.from = bowls.front().day;
  report.until = bowls.back().day;
  report.days = animalsByDay(bowls).size();
  for (const EatenBowl& bowl : bowls) report.findings += bowl.findings.size();
  report.foods = foodReports(bowls, confidence);
  for (const food::NutrientId nutrient : nutrients) {
    NutrientReport& entry = report.nutrients.emplace_back();
    entry.nutrient = nutrient;
    entry.days = dailyIntake(bowls, Contents::ofNutrient(problem.foods, problem.energyMethod, nutrient));
    std::vector<DayIntake> ofOne;
    ofOne.reserve(entry.days.size());
    for (const DayIntake& day : entry.days) ofOne.push_back(perAnimal(day));
    entry.perAnimal = meanOfDays(ofOne, confidence);
  }
  const std::vector<EatenBowl> known = knownDays(bowls);
  const auto animals = animalsByDay(known);
  report.daysKnown = animals.size();
  if (animals.empty()) return report;
  double animalDays = 0.0;
  for (const auto& [day, count] : animals) animalDays += count;
  const std::vector<FoodReport> ofKnown = foodReports(known, confidence);
  report.asEaten = balanceOf(problem, ofKnown, animalDays, [](const FoodReport& f) { return f.eaten; });
  report.asOffered = balanceOf(problem, ofKnown, animalDays, [](const FoodReport& f) { return f.offered; });
  return report;
}

}  // namespace tarebowl::intake
