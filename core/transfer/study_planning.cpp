// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/study_planning.h"

#include "core/transfer/intake_period.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace tarebowl::transfer {

namespace {

using intake::DayValue;
using quantity::Date;
using Why = NoStudyPlan::Why;

constexpr std::chrono::days kHistory{56};
constexpr std::chrono::days kWeek{7};

std::vector<DayValue> daysOf(const IntakePeriod& period, const std::optional<food::NutrientId>& nutrient) {
  const intake::Contents contents =
      nutrient ? contentsOf(period, *nutrient) : intake::Contents::ofMass(period.problem.foods);
  std::vector<DayValue> days;
  for (const intake::DayIntake& day : intake::dailyIntake(period.eaten, contents)) {
    const intake::DayIntake one = intake::perAnimal(day);
    days.push_back({one.day, one.eaten ? std::optional(one.eaten->value()) : std::nullopt});
  }
  return days;
}

std::vector<intake::FedBowl> lastWeek(const IntakePeriod& period) {
  std::vector<intake::FedBowl> bowls;
  const Date from = std::chrono::sys_days(period.to) - kWeek + std::chrono::days(1);
  std::ranges::copy_if(period.fed, std::back_inserter(bowls),
                       [&](const intake::FedBowl& bowl) { return bowl.day >= from; });
  return bowls;
}

}  // namespace

std::variant<exchange::StudyPlanToWrite, NoStudyPlan> planIntakeStudy(const store::Collection& collection,
                                                                      const StudyAsked& asked) {
  const std::chrono::sys_days first(asked.first);
  const auto period = readIntake(collection, asked.group, first - kHistory, first - std::chrono::days(1));
  if (!period) return NoStudyPlan{Why::NoGroup};
  const std::vector<intake::FedBowl> bowls = lastWeek(*period);
  if (bowls.empty()) return NoStudyPlan{Why::NoBowl};
  const std::vector<DayValue> days = daysOf(*period, asked.nutrient);
  const auto known = static_cast<std::size_t>(
      std::ranges::count_if(days, [](const DayValue& day) { return day.value.has_value(); }));
  const auto variation = intake::variationOf(intake::onCalendar(days));
  if (!variation) return NoStudyPlan{Why::TooFewDays, known};
  if (!(variation->mean > 0.0)) return NoStudyPlan{Why::NothingEaten, known};
  const std::vector<std::string> unchanged = classesWithoutPans();
  auto plan = intake::planStudy(
      *variation, {.halfWidth = asked.precision * variation->mean, .confidence = asked.confidence}, bowls,
      unchanged);
  if (!plan) return NoStudyPlan{Why::OutOfReach, known};
  exchange::StudyPlanToWrite made{.group = asked.group,
                                  .groupName = period->group.group.record.name,
                                  .section = period->group.group.record.section,
                                  .invented = period->invented,
                                  .nutrient = asked.nutrient,
                                  .first = asked.first,
                                  .learnedFrom = period->from,
                                  .learnedUntil = period->to,
                                  .plan = std::move(*plan)};
  for (const diet::DietFood& food : period->problem.foods) made.foodNames.emplace(food.id, food.name);
  return made;
}

}  // namespace tarebowl::transfer
