// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/calcium_days.h"

#include "core/intake/series.h"

#include <algorithm>
#include <unordered_map>

namespace tarebowl::health {

namespace {

using intake::DayIntake;

double animalsOn(quantity::Date day, const CalciumQuestion& question) {
  const auto found = question.animals.find(day);
  return std::max(1, found == question.animals.end() ? question.problem.eater.count : found->second);
}

intake::DailySeries seriesOf(std::span<const DayIntake> days) {
  std::vector<intake::DayValue> values;
  for (const DayIntake& day : days)
    values.push_back({day.day, day.eaten ? std::optional(day.eaten->value()) : std::nullopt});
  return intake::onCalendar(values);
}

std::size_t placeOf(quantity::Date day, const intake::DailySeries& series) {
  return static_cast<std::size_t>((std::chrono::sys_days(day) - std::chrono::sys_days(series.first)).count());
}

/// Means per day, per body and per dry matter. Dry matter is counted on the same days.
StrandMeans meansOf(std::span<const DayIntake> days, std::span<const DayIntake> dryMatter, bool eaten,
                    const std::optional<quantity::Kilograms>& bodyMass) {
  double sum = 0.0;
  double sumOfDry = 0.0;
  double sumBoth = 0.0;
  std::size_t known = 0;
  for (std::size_t i = 0; i < days.size(); ++i) {
    if (days[i].coverage == 0.0 || (eaten && !days[i].eaten)) continue;
    ++known;
    const double value = eaten ? days[i].eaten->value() : days[i].offered;
    sum += value;
    if (eaten && !dryMatter[i].eaten) continue;
    sumBoth += value;
    sumOfDry += eaten ? dryMatter[i].eaten->value() : dryMatter[i].offered;
  }
  StrandMeans means;
  if (known == 0) return means;
  constexpr double kGramsPerKilogram = 1000.0;
  means.perDay = sum / static_cast<double>(known);
  if (bodyMass) means.perKgBody = *means.perDay / bodyMass->value();
  if (sumOfDry > 0.0) means.perKgDryMatter = sumBoth / sumOfDry * kGramsPerKilogram;
  return means;
}

std::vector<DayIntake> daysOf(food::NutrientId nutrient, std::span<const intake::EatenBowl> bowls,
                              const CalciumQuestion& question) {
  const diet::BalanceProblem& problem = question.problem;
  return perAnimal(
      intake::dailyIntake(bowls, intake::Contents::ofNutrient(problem.foods, problem.energyMethod, nutrient)),
      question);
}

}  // namespace

std::vector<intake::EatenBowl> withRetained(std::span<const intake::EatenBowl> bowls,
                                            const std::map<std::string, double>& retained) {
  std::vector<intake::EatenBowl> kept(bowls.begin(), bowls.end());
  for (intake::EatenBowl& bowl : kept)
    for (intake::EatenItem& item : bowl.items) {
      const auto share = retained.find(item.food);
      if (share == retained.end()) continue;
      if (item.eaten) *item.eaten *= share->second;
      item.atLeast *= share->second;
      item.atMost *= share->second;
    }
  return kept;
}

std::vector<DayIntake> perAnimal(std::vector<DayIntake> days, const CalciumQuestion& question) {
  for (DayIntake& day : days) {
    const double share = 1.0 / animalsOn(day.day, question);
    day.offered *= share;
    day.atLeast *= share;
    day.atMost *= share;
    day.lost *= share;
    if (day.eaten) *day.eaten *= share;
  }
  return days;
}

Strand strandOf(food::NutrientId nutrient, std::span<const intake::EatenBowl> bowls,
                const CalciumQuestion& question) {
  std::vector<DayIntake> days = daysOf(nutrient, bowls, question);
  for (DayIntake& day : days)
    if (day.coverage == 0.0) day.eaten.reset();  // of no food eaten is it known: that is not nothing
  const std::vector<DayIntake> dry =
      perAnimal(intake::dailyIntake(bowls, intake::Contents::ofDryMatter(question.problem.foods)), question);
  Strand strand{.nutrient = nutrient};
  const intake::DailySeries series = seriesOf(days);
  const auto rolling = intake::rollingMeans(series, kRollingDays, kRollingAtLeast);
  for (const DayIntake& day : days) {
    StrandDay& shown = strand.days.emplace_back();
    shown.day = day.day;
    if (day.coverage > 0.0) shown.offered = day.offered;
    shown.atMost = day.atMost;
    shown.coverage = day.coverage;
    shown.rolling = rolling[placeOf(day.day, series)].mean;
    if (!day.eaten) continue;
    shown.eaten = day.eaten->value();
    shown.sd = day.eaten->sd();
  }
  const auto& bodyMass = question.problem.eater.bodyMass;
  strand.offered = meansOf(days, dry, false, bodyMass);
  strand.eaten = meansOf(days, dry, true, bodyMass);
  const intake::PeriodIntake period = intake::overPeriod(days);
  strand.eatenSd = period.meanPerDay ? period.meanPerDay->sd() : 0.0;
  strand.dayToDaySd = period.dayToDaySd;
  strand.known = period.known;
  strand.coverage = period.known > 0 ? period.coverage : 0.0;
  return strand;
}

std::vector<RatioDay> ratioDays(std::span<const intake::EatenBowl> bowls, const CalciumQuestion& question) {
  const diet::BalanceProblem& problem = question.problem;
  const auto contents = [&](food::NutrientId nutrient) {
    return intake::Contents::ofNutrient(problem.foods, problem.energyMethod, nutrient);
  };
  const auto calcium = contents(food::nutrients::calcium());
  const auto phosphorus = contents(food::nutrients::phosphorus());
  const intake::DailySeries above = seriesOf(intake::dailyIntake(bowls, calcium));
  const intake::DailySeries below = seriesOf(intake::dailyIntake(bowls, phosphorus));
  const auto meanAbove = intake::rollingMeans(above, kRollingDays, kRollingAtLeast);
  const auto meanBelow = intake::rollingMeans(below, kRollingDays, kRollingAtLeast);
  std::vector<RatioDay> ratios;
  for (const intake::DayRatio& day : intake::dailyRatio(bowls, calcium, phosphorus)) {
    RatioDay& ratio = ratios.emplace_back();
    ratio.day = day.day;
    ratio.offered = day.offered;
    ratio.coverage = day.coverage;
    if (day.eaten) {
      ratio.eaten = day.eaten->value();
      ratio.sd = day.eaten->sd();
    }
    const std::size_t place = placeOf(day.day, above);
    if (meanAbove[place].mean && meanBelow[place].mean && *meanBelow[place].mean > 0.0)
      ratio.rolling = *meanAbove[place].mean / *meanBelow[place].mean;
  }
  return ratios;
}

MeanBowl meanBowl(std::span<const intake::EatenBowl> bowls, const CalciumQuestion& question) {
  const std::vector<diet::DietFood>& foods = question.problem.foods;
  std::unordered_map<std::string, std::size_t> places;
  for (std::size_t i = 0; i < foods.size(); ++i) places.emplace(foods[i].id, i);
  MeanBowl mean;
  std::vector<double> offered(foods.size());
  std::vector<double> eaten(foods.size());
  for (std::size_t i = 0; i < bowls.size();) {
    const quantity::Date day = bowls[i].day;
    const double animals = animalsOn(day, question);
    std::vector<double> today(foods.size());
    bool complete = true;
    for (; i < bowls.size() && bowls[i].day == day; ++i)
      for (const intake::EatenItem& item : bowls[i].items) {
        complete = complete && item.eaten.has_value();
        const auto place = places.find(item.food);
        if (place == places.end()) continue;
        offered[place->second] += item.offered / animals;
        today[place->second] += item.eaten ? item.eaten->value() / animals : 0.0;
      }
    ++mean.days;
    if (!complete) continue;
    ++mean.completeDays;
    for (std::size_t food = 0; food < foods.size(); ++food) eaten[food] += today[food];
  }
  for (const double grams : offered)
    mean.offered.emplace_back(mean.days == 0 ? 0.0 : grams / static_cast<double>(mean.days));
  if (mean.completeDays > 0)
    for (const double grams : eaten)
      mean.eaten.emplace_back(std::max(0.0, grams / static_cast<double>(mean.completeDays)));
  return mean;
}

}  // namespace tarebowl::health
