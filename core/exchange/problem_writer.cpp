// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/numbers.h"
#include "core/exchange/origin_json.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/rule_writer.h"
#include "core/exchange/safety_json.h"

#include <nlohmann/json.hpp>

#include <map>

namespace tarebowl::exchange {

namespace {

using diet::BalanceProblem;
using food::Composition;
using food::NutrientValue;

/// The source that most values share, so that it is written once.
std::string commonSource(const Composition& composition) {
  std::map<std::string, int> counts;
  for (const auto nutrient : composition.knownNutrients()) ++counts[composition.find(nutrient)->source];
  std::string common;
  int most = 0;
  for (const auto& [source, count] : counts) {
    if (count <= most) continue;
    common = source;
    most = count;
  }
  return common;
}

void writeComposition(const Composition& composition, Json& food) {
  const std::string common = commonSource(composition);
  Json amounts = Json::object();
  Json deviations = Json::object();
  Json sources = Json::object();
  Json qualifiers = Json::object();
  Json counts = Json::object();
  for (const auto nutrient : composition.knownNutrients()) {
    const std::string& tagname = food::describe(nutrient).tagname;
    const NutrientValue& value = *composition.find(nutrient);
    amounts[tagname] = toJson(value.amount.value());
    if (value.sd) deviations[tagname] = toJson(value.sd->value());
    if (value.source != common) sources[tagname] = value.source;
    if (value.qualifier != food::Qualifier::Equal) qualifiers[tagname] = symbolOf(value.qualifier);
    if (value.sampleCount) counts[tagname] = *value.sampleCount;
  }
  putText(food, "source", common);
  food["per_100_g"] = std::move(amounts);
  if (!deviations.empty()) food["sd_per_100_g"] = std::move(deviations);
  if (!sources.empty()) food["sources"] = std::move(sources);
  if (!qualifiers.empty()) food["qualifiers"] = std::move(qualifiers);
  if (!counts.empty()) food["n_samples"] = std::move(counts);
}

Json writeFood(const diet::DietFood& food) {
  Json json = Json::object();
  json["id"] = food.id;
  putText(json, "name", food.name);
  putText(json, "group", food.group);
  putText(json, "form", food.form);
  putText(json, "preparation", food.preparation);
  if (food.invented) json["invented"] = true;
  if (!food.cautions.empty()) json["cautions"] = food.cautions;
  writeComposition(food.composition, json);
  if (food.min.value() != 0.0) json["min_g"] = toJson(food.min.value());
  if (food.max) json["max_g"] = toJson(food.max->value());
  json["scale_step_g"] = toJson(food.scaleStep.value());
  put(json, "cost_per_kg", food.costPerKg);
  if (food.eatenFraction != 1.0) json["eaten_fraction"] = toJson(food.eatenFraction);
  return json;
}

Json writeEater(const diet::Eater& eater) {
  Json json = Json::object();
  putText(json, "name", eater.name);
  json["count"] = eater.count;
  if (!eater.taxa.empty()) json["taxa"] = eater.taxa;
  if (eater.bodyMass) json["body_mass_kg"] = toJson(eater.bodyMass->value());
  return json;
}

void writeWishes(const BalanceProblem& problem, Json& json) {
  if (problem.reference) {
    Json reference = Json::object();
    for (std::size_t i = 0; i < problem.foods.size(); ++i) {
      const double grams = problem.reference->at(i).value();
      if (grams != 0.0) reference[problem.foods[i].id] = toJson(grams);
    }
    json["reference"] = std::move(reference);
  }
  Json objective{{"kind", animal::symbolOf(problem.objective.kind)}};
  if (problem.objective.nutrient) objective["nutrient"] = food::describe(*problem.objective.nutrient).tagname;
  json["objective"] = std::move(objective);
  put(json, "confidence", problem.confidence);
  json["whole_steps"] = problem.wholeSteps;
}

}  // namespace

std::string writeProblem(const BalanceProblem& problem) {
  Json json{{"format", kProblemFormat}};
  putText(json, "title", problem.title);
  putText(json, "notes", problem.notes);
  if (problem.invented) json["invented"] = true;
  json["animal"] = writeEater(problem.eater);
  json["energy_method"] = food::symbolOf(problem.energyMethod);
  json["foods"] = writeList(problem.foods, writeFood);
  json["targets"] = writeList(problem.targets, writeTarget);
  json["ratios"] = writeList(problem.ratios, writeRatio);
  json["shares"] = writeList(problem.shares, writeShare);
  json["choices"] = writeList(problem.choices, writeChoice);
  writeSafety(problem, json);
  writeWishes(problem, json);
  return toText(json);
}

}  // namespace tarebowl::exchange
