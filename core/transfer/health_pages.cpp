// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/health_pages.h"

#include <algorithm>
#include <set>

namespace tarebowl::transfer {

namespace {

exchange::HealthSubjectLine subjectOf(const HealthPeriod& period) {
  exchange::HealthSubjectLine subject;
  subject.name = period.name;
  subject.group = period.subject.group;
  subject.individual = period.subject.individual;
  subject.species = period.intake.group.species.name;
  subject.animals = std::max(1, period.intake.group.headcount.value_or(1));
  if (period.bodyMass) subject.bodyMass = period.bodyMass->value();
  subject.sharesItsBowl = period.sharesItsBowl();
  subject.invented = period.intake.invented;
  subject.foodNames = period.foodNames;
  return subject;
}

/// Where the calcium and phosphorus of the foods come from, each once.
std::vector<std::string> sourcesOf(const HealthPeriod& period) {
  std::set<std::string> sources;
  for (const diet::DietFood& food : period.intake.problem.foods)
    for (const food::NutrientId nutrient : {food::nutrients::calcium(), food::nutrients::phosphorus()})
      if (const food::NutrientValue* value = food.composition.find(nutrient); value && !value->source.empty())
        sources.insert(value->source);
  return {sources.begin(), sources.end()};
}

}  // namespace

exchange::CalciumPage calciumPage(const HealthPeriod& period, health::CalciumReview review) {
  exchange::CalciumPage page{.subject = subjectOf(period), .review = std::move(review)};
  if (const auto& profile = period.intake.group.profile)
    page.profile = profile->profile.code + ' ' + std::to_string(profile->profile.version);
  for (const MassSeen& mass : period.masses) page.masses.push_back({mass.day, mass.who, mass.kilograms});
  for (const store::StoredObservation& seen : period.observations)
    for (const health::BloodValue& value : seen.record.blood)
      page.blood.push_back(
          {seen.record.on, seen.record.individual.value_or(seen.record.group.value_or("")), value});
  for (const DietBegun& diet : period.diets) page.diets.push_back({diet.day, diet.diet, diet.version});
  page.sources = sourcesOf(period);
  return page;
}

exchange::LookBackPage lookBackPage(const HealthPeriod& period, health::SignKind kind,
                                    health::LookBack lookBack, const health::LookBackRule& rule) {
  return {subjectOf(period), kind, period.from, period.to, std::move(lookBack), rule};
}

}  // namespace tarebowl::transfer
