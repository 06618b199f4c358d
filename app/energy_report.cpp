// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/energy_report.h"

#include "core/animal/animal_words.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <string_view>

namespace tarebowl::app {

namespace {

using animal::EnergyCaution;
using animal::EnergyStep;
using Json = nlohmann::ordered_json;

std::string range(double low, double high) {
  return low == high ? fmt::format("{:.4g}", low) : fmt::format("{:.4g} to {:.4g}", low, high);
}

std::string_view sentenceFor(EnergyCaution caution) {
  switch (caution) {
    case EnergyCaution::NotAFeedingRate:
      return "this is no feeding rate: the need follows body temperature";
    case EnergyCaution::FreeLivingLevel:
      return "animals living free spend this; none in human care does";
    case EnergyCaution::OutsideValidity:
      return "the source does not speak of animals of this mass";
    case EnergyCaution::SourceFromMemory:
      return "a number was recalled and not read: it is no citation";
    case EnergyCaution::FactorsDoubleCount:
      return "factors count the same thing twice, or one multiplies what it was not meant for";
  }
  return "";
}

std::string lineFor(const EnergyStep& step) {
  std::string value = range(step.low, step.high);
  const std::string by = range(step.by, step.byHigh);
  switch (step.kind) {
    case EnergyStep::Kind::BodyMass:
      return fmt::format("body mass {} kg", value);
    case EnergyStep::Kind::MetabolicMass:
      return fmt::format("to the power of {}: {}", by, value);
    case EnergyStep::Kind::Level:
      return fmt::format("times {} kcal: {} kcal per day", by, value);
    case EnergyStep::Kind::Factor:
      return fmt::format("times {} ({}): {} kcal per day", by, step.words, value);
    case EnergyStep::Kind::PerAnimal:
      return fmt::format("each animal: {} kcal per day", value);
    case EnergyStep::Kind::Headcount:
      return fmt::format("animals: {}", value);
    case EnergyStep::Kind::Group:
      return fmt::format("the group: {} kcal per day", value);
  }
  return value;
}

std::string sourceOf(const animal::TargetOrigin& origin) {
  if (origin.source.empty()) return {};
  const std::string_view word = animal::symbolOf(origin.provenance);
  return word.empty() ? fmt::format("  [{}]", origin.source) : fmt::format("  [{}: {}]", word, origin.source);
}

Json originJson(const animal::TargetOrigin& origin) {
  Json json = Json::object();
  if (!origin.source.empty()) json["source"] = origin.source;
  if (const auto word = animal::symbolOf(origin.provenance); !word.empty()) json["provenance"] = word;
  return json;
}

}  // namespace

Json energyJson(const animal::EnergyPlan& plan, const animal::EnergyDerivation& energy) {
  Json json{{"animals", plan.group},
            {"level", animal::symbolOf(plan.level)},
            {"kcal_at_1_kg", plan.coefficient},
            {"exponent", plan.exponent}};
  json.update(originJson(plan.origin));
  json["steps"] = Json::array();
  for (const EnergyStep& step : energy.steps) {
    Json line{{"step", animal::symbolOf(step.kind)},
              {"by", step.by},
              {"by_high", step.byHigh},
              {"low", step.low},
              {"high", step.high}};
    if (!step.words.empty()) line["words"] = step.words;
    line.update(originJson(step.origin));
    json["steps"].push_back(std::move(line));
  }
  json["low_kcal_per_day"] = energy.low.value();
  json["high_kcal_per_day"] = energy.high.value();
  json["cautions"] = Json::array();
  for (const EnergyCaution caution : energy.cautions) json["cautions"].push_back(animal::symbolOf(caution));
  return json;
}

std::string energyText(const animal::EnergyPlan& plan, const animal::EnergyDerivation& energy) {
  std::string text = fmt::format("Energy need, {} ({})\n", plan.group, animal::symbolOf(plan.level));
  for (const EnergyStep& step : energy.steps)
    text += fmt::format("  {}{}\n", lineFor(step), sourceOf(step.origin));
  for (const EnergyCaution caution : energy.cautions)
    text += fmt::format("  caution: {}\n", sentenceFor(caution));
  return text;
}

}  // namespace tarebowl::app
