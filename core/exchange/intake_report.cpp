// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/intake_report.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;

template <class Number>
Json orNull(const std::optional<Number>& value) {
  return value ? Json(*value) : Json(nullptr);
}

std::string_view unitOf(food::NutrientId nutrient) {
  return quantity::symbolOf(food::describe(nutrient).unit);
}

Json meanJson(const std::optional<intake::MeanOfDays>& mean) {
  if (!mean) return nullptr;
  Json json{{"mean", mean->mean}, {"days", mean->days}};
  json["day_to_day_sd"] = orNull(mean->dayToDaySd);
  json["low"] = mean->interval ? Json(mean->interval->low) : Json(nullptr);
  json["high"] = mean->interval ? Json(mean->interval->high) : Json(nullptr);
  json["composition_sd"] = mean->commonSd;
  return json;
}

Json dayJson(const intake::DayIntake& day) {
  Json json{{"day", quantity::isoDate(day.day)}, {"animals", day.animals}, {"offered", day.offered}};
  json["eaten"] = day.eaten ? Json(day.eaten->value()) : Json(nullptr);
  json["sd"] = day.eaten ? Json(day.eaten->sd()) : Json(nullptr);
  json["at_least"] = day.atLeast;
  json["at_most"] = day.atMost;
  json["coverage"] = day.coverage;
  if (day.estimated) json["estimated"] = true;
  return json;
}

Json ratioJson(const intake::DayRatio& day) {
  Json json{{"day", quantity::isoDate(day.day)}};
  json["offered"] = orNull(day.offered);
  json["eaten"] = day.eaten ? Json(day.eaten->value()) : Json(nullptr);
  json["sd"] = day.eaten ? Json(day.eaten->sd()) : Json(nullptr);
  json["coverage"] = day.coverage;
  return json;
}

void addFraction(Json& json, const std::vector<intake::EatenFraction>& fractions, const std::string& food) {
  const auto found = std::ranges::find(fractions, food, &intake::EatenFraction::food);
  json["eaten_fraction"] = nullptr;
  if (found == fractions.end()) return;
  json["eaten_fraction"] = found->fraction;
  json["eaten_fraction_sd"] = found->sd;
  json["own_weight"] = found->ownWeight;
}

Json choiceJson(const intake::FoodChoice& food) {
  Json json{{"food", food.food}, {"bowls", food.bowls}, {"bowls_all_eaten", food.bowlsAllEaten}};
  json["alpha"] = orNull(food.alpha);
  if (food.interval) {
    json["alpha_low"] = food.interval->low;
    json["alpha_high"] = food.interval->high;
  }
  if (!food.alpha) json["alpha_missing"] = symbolOf(food.state);
  json["ivlev"] = orNull(food.ivlev);
  return json;
}

Json choiceJson(const intake::BowlChoice& bowl) {
  Json json{{"bowl", bowl.label},
            {"bowls", bowl.choice.bowls},
            {"bowls_emptied", bowl.choice.bowlsEmptied},
            {"bowls_not_known", bowl.choice.bowlsNotKnown},
            {"neutral", bowl.choice.neutral},
            {"foods", Json::array()}};
  for (const intake::FoodChoice& food : bowl.choice.foods) json["foods"].push_back(choiceJson(food));
  return json;
}

Json foodJson(const IntakeToWrite& intake, const intake::FoodReport& food) {
  Json json{{"food", food.food},
            {"offered_g", food.offered},
            {"left_g", food.left},
            {"left_as_offered_g", food.leftAsOffered},
            {"lost_g", food.lost},
            {"eaten_g", food.eaten},
            {"bowls", food.bowls},
            {"bowls_not_known", food.bowlsNotKnown},
            {"bowls_estimated", food.bowlsEstimated},
            {"eaten_g_per_day", meanJson(food.eatenPerDay)}};
  addFraction(json, intake.fractions, food.food);
  return json;
}

Json nutrientJson(const intake::NutrientReport& nutrient) {
  Json json{{"nutrient", food::describe(nutrient.nutrient).tagname}, {"unit", unitOf(nutrient.nutrient)}};
  json["per_animal"] = meanJson(nutrient.perAnimal);
  json["days"] = Json::array();
  for (const intake::DayIntake& day : nutrient.days) json["days"].push_back(dayJson(day));
  return json;
}

Json targetsJson(const IntakeToWrite& intake) {
  Json json = Json::array();
  if (!intake.report.asEaten) return json;
  for (std::size_t i = 0; i < intake.report.asEaten->targets.size(); ++i) {
    const diet::TargetBalance& eaten = intake.report.asEaten->targets[i];
    const diet::TargetBalance& offered = intake.report.asOffered->targets[i];
    Json line{{"id", eaten.id}};
    line["min"] = orNull(eaten.min);
    line["max"] = orNull(eaten.max);
    line["eaten"] = orNull(eaten.value);
    line["eaten_state"] = diet::symbolOf(eaten.state);
    line["offered"] = orNull(offered.value);
    line["offered_state"] = diet::symbolOf(offered.state);
    line["coverage"] = eaten.coverage;
    json.push_back(std::move(line));
  }
  return json;
}

Json digestionJson(const intake::DigestionTrial& trial) {
  Json json{{"from", quantity::isoDate(trial.collected.from)},
            {"to", quantity::isoDate(trial.collected.until)},
            {"days", trial.days},
            {"days_known", trial.daysKnown},
            {"fresh_g", trial.collected.fresh.value()},
            {"source", trial.collected.source},
            {"lines", Json::array()}};
  for (const intake::DigestedLine& line : trial.lines) {
    Json entry{
        {"nutrient", line.nutrient ? Json(food::describe(*line.nutrient).tagname) : Json("dry-matter")},
        {"unit", line.nutrient ? std::string(unitOf(*line.nutrient)) : "g"},
        {"eaten", line.eaten.value},
        {"in_faeces", line.inFaeces.value},
        {"coverage", line.coverage}};
    entry["apparent"] = line.apparent ? Json(line.apparent->share) : Json(nullptr);
    entry["apparent_sd"] = line.apparent ? Json(line.apparent->sd) : Json(nullptr);
    json["lines"].push_back(std::move(entry));
  }
  return json;
}

Json findingsJson(const std::vector<intake::EatenBowl>& bowls) {
  Json json = Json::array();
  for (const intake::EatenBowl& bowl : bowls)
    for (const intake::Finding& finding : bowl.findings) {
      Json line{{"day", quantity::isoDate(bowl.day)},
                {"food", bowl.items[finding.item].food},
                {"what", symbolOf(finding.kind)}};
      if (finding.kind == intake::FindingKind::LeftoverAboveOffered) {
        line["g_above_offered"] = finding.amount;
        line["sds"] = finding.sds;
      }
      json.push_back(std::move(line));
    }
  return json;
}

/// As few digits as say the number again.
std::string cell(const std::optional<double>& value) {
  return value ? fmt::format("{}", *value) : std::string();
}

}  // namespace

std::string digestionNote(const intake::DigestionTrial& trial, const intake::DigestedLine& line) {
  if (trial.daysKnown < trial.days)
    return fmt::format("? what was eaten is known of {} of {} days", trial.daysKnown, trial.days);
  if (!(line.eaten.value > 0.0) || !(line.coverage > 0.0)) return "? of no food eaten is it known";
  if (line.coverage < 1.0) return "at least: some foods' values are not known";
  return line.apparent && line.apparent->share < 0.0 ? "more in the faeces than was eaten" : "";
}

std::string_view symbolOf(intake::FindingKind kind) {
  switch (kind) {
    case intake::FindingKind::LeftoverAboveOffered:
      return "leftover-above-offered";
    case intake::FindingKind::NoPan:
      return "no-pan";
    case intake::FindingKind::BorrowedPan:
      return "borrowed-pan";
    case intake::FindingKind::NotWeighed:
      return "not-weighed";
    case intake::FindingKind::LossUnknown:
      return "loss-unknown";
    case intake::FindingKind::NoEstimate:
      return "no-estimate";
    case intake::FindingKind::NoRemainder:
      return "no-remainder";
    case intake::FindingKind::PartsMissing:
      return "parts-missing";
  }
  return "";
}

std::string_view symbolOf(intake::ChoiceState state) {
  switch (state) {
    case intake::ChoiceState::Known:
      return "no-bowls";
    case intake::ChoiceState::AllEaten:
      return "all-eaten";
    case intake::ChoiceState::NothingEaten:
      return "nothing-eaten";
    case intake::ChoiceState::RarelyOffered:
      return "rarely-offered";
    case intake::ChoiceState::Alone:
      return "alone";
  }
  return "";
}

std::string intakeAsJson(const IntakeToWrite& intake) {
  Json json{{"format", kIntakeFormat},
            {"group", intake.group},
            {"name", intake.groupName},
            {"from", quantity::isoDate(intake.from)},
            {"to", quantity::isoDate(intake.to)}};
  if (intake.invented) json["invented"] = true;
  json["days"] = intake.report.days;
  json["days_known"] = intake.report.daysKnown;
  json["pans"] = intake.pans;
  json["energy_method"] = food::symbolOf(intake.problem.energyMethod);
  json["foods"] = Json::array();
  for (const intake::FoodReport& food : intake.report.foods) json["foods"].push_back(foodJson(intake, food));
  json["foods_not_known"] = intake.unknownFoods;
  json["choice"] = Json::array();
  for (const intake::BowlChoice& bowl : intake.choices) json["choice"].push_back(choiceJson(bowl));
  json["nutrients"] = Json::array();
  for (const intake::NutrientReport& nutrient : intake.report.nutrients)
    json["nutrients"].push_back(nutrientJson(nutrient));
  json["ca_to_p"] = Json::array();
  for (const intake::DayRatio& day : intake.calciumToPhosphorus) json["ca_to_p"].push_back(ratioJson(day));
  json["targets"] = targetsJson(intake);
  json["digestibility"] = Json::array();
  for (const intake::DigestionTrial& trial : intake.digestion)
    json["digestibility"].push_back(digestionJson(trial));
  json["findings"] = findingsJson(intake.bowls);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::string intakeAsCsv(const IntakeToWrite& intake) {
  std::string text = "day,nutrient,unit,animals,offered,eaten,sd,at_least,at_most,coverage\n";
  for (const intake::NutrientReport& nutrient : intake.report.nutrients)
    for (const intake::DayIntake& day : nutrient.days) {
      const auto eaten = day.eaten ? std::optional(day.eaten->value()) : std::nullopt;
      const auto sd = day.eaten ? std::optional(day.eaten->sd()) : std::nullopt;
      text += fmt::format("{},{},{},{},{},{},{},{},{},{}\n", quantity::isoDate(day.day),
                          food::describe(nutrient.nutrient).tagname, unitOf(nutrient.nutrient), day.animals,
                          cell(day.offered), cell(eaten), cell(sd), cell(day.atLeast), cell(day.atMost),
                          cell(day.coverage));
    }
  return text;
}

}  // namespace tarebowl::exchange
