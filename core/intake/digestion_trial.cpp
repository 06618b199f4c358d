// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/digestion_trial.h"

#include "core/intake/daily_intake.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace tarebowl::intake {

namespace {

constexpr double kPer100 = 100.0;

std::vector<EatenBowl> bowlsOf(const FaecesCollected& collected, std::span<const EatenBowl> bowls) {
  std::vector<EatenBowl> during;
  std::ranges::copy_if(bowls, std::back_inserter(during), [&](const EatenBowl& bowl) {
    return collected.from <= bowl.day && bowl.day <= collected.until;
  });
  return during;
}

Measured dryMatterOf(const FaecesCollected& collected) {
  const double fresh = collected.fresh.value();
  return {fresh * collected.dryMatter / kPer100, fresh * collected.dryMatterSd.value_or(0.0) / kPer100};
}

/// The product of dry matter and content, errors to first order.
Measured nutrientOf(const FaecesCollected& collected, const FaecesValue& value) {
  const Measured dry = dryMatterOf(collected);
  const double content = value.per100gDryMatter / kPer100;
  return {dry.value * content, std::hypot(dry.sd * content, dry.value * value.sd.value_or(0.0) / kPer100)};
}

DigestedLine lineOf(const PeriodIntake& eaten, Measured inFaeces, bool allDaysKnown) {
  DigestedLine line{.inFaeces = inFaeces};
  line.eaten = {eaten.total.value(), eaten.total.sd()};
  line.coverage = eaten.coverage;
  if (allDaysKnown && line.coverage > 0.0) line.apparent = byCollection(line.eaten, inFaeces);
  return line;
}

}  // namespace

DigestionTrial digestionOf(const FaecesCollected& collected, const diet::BalanceProblem& problem,
                           std::span<const EatenBowl> bowls) {
  DigestionTrial trial{.collected = collected};
  trial.days = static_cast<std::size_t>(
      (std::chrono::sys_days(collected.until) - std::chrono::sys_days(collected.from)).count() + 1);
  const std::vector<EatenBowl> during = bowlsOf(collected, bowls);
  // Grams are known of a day on which the leftovers of all foods are.
  const PeriodIntake dryMatter = overPeriod(dailyIntake(during, Contents::ofDryMatter(problem.foods)));
  trial.daysKnown = dryMatter.known;
  const bool allDaysKnown = trial.daysKnown == trial.days;
  trial.lines.push_back(lineOf(dryMatter, dryMatterOf(collected), allDaysKnown));
  for (const FaecesValue& value : collected.values) {
    const Contents contents = Contents::ofNutrient(problem.foods, problem.energyMethod, value.nutrient);
    trial.lines.push_back(
        lineOf(overPeriod(dailyIntake(during, contents)), nutrientOf(collected, value), allDaysKnown));
    trial.lines.back().nutrient = value.nutrient;
  }
  return trial;
}

}  // namespace tarebowl::intake
