// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/animal_words.h"
#include "core/exchange/health_page.h"
#include "core/exchange/health_sentences.h"
#include "core/exchange/numbers.h"
#include "core/health/health_words.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using quantity::isoDate;

Json subjectJson(const char* format, const HealthSubjectLine& subject) {
  Json json{{"format", format}, {"invented", subject.invented}, {"group", subject.group}};
  json["animal"] = subject.individual.empty() ? Json() : Json(subject.individual);
  json["name"] = subject.name;
  json["animals"] = subject.animals;
  json["body_mass_kg"] = toJson(subject.bodyMass);
  json["shares_its_bowl"] = subject.sharesItsBowl;
  return json;
}

Json meansJson(const health::StrandMeans& means) {
  return {{"per_day", toJson(means.perDay)},
          {"per_kg_body_mass", toJson(means.perKgBody)},
          {"per_kg_dry_matter", toJson(means.perKgDryMatter)}};
}

Json strandJson(const health::Strand& strand) {
  Json json{{"nutrient", food::describe(strand.nutrient).tagname}, {"unit", symbolFor(strand.nutrient)}};
  json["offered"] = meansJson(strand.offered);
  json["eaten"] = meansJson(strand.eaten);
  json["eaten"]["sd_of_mean"] = toJson(strand.eatenSd);
  json["eaten"]["day_to_day_sd"] = toJson(strand.dayToDaySd);
  json["days_known"] = strand.known;
  json["coverage"] = toJson(strand.coverage);
  json["days"] = Json::array();
  for (const health::StrandDay& day : strand.days)
    json["days"].push_back({{"day", isoDate(day.day)},
                            {"offered", toJson(day.offered)},
                            {"eaten", toJson(day.eaten)},
                            {"sd", day.eaten ? toJson(day.sd) : Json()},
                            {"at_most", toJson(day.atMost)},
                            {"coverage", toJson(day.coverage)},
                            {"rolling_7_days", toJson(day.rolling)}});
  return json;
}

Json standingJson(const diet::TargetBalance& balance) {
  return {{"value", toJson(balance.value)},
          {"state", symbolOf(balance.state)},
          {"sd", toJson(balance.sd)},
          {"coverage", toJson(balance.coverage)}};
}

Json zonesJson(const std::vector<health::CalciumZone>& zones) {
  Json json = Json::array();
  for (const health::CalciumZone& zone : zones) {
    Json& one = json.emplace_back();
    one["id"] = zone.id;
    one["unit"] = zone.unit ? Json(quantity::symbolOf(*zone.unit)) : Json();
    one["basis"] = zone.basis ? Json(quantity::symbolOf(*zone.basis)) : Json();
    one["min"] = toJson(zone.eaten.id.empty() ? zone.offered.min : zone.eaten.min);
    one["max"] = toJson(zone.eaten.id.empty() ? zone.offered.max : zone.eaten.max);
    if (!zone.offered.id.empty()) one["offered"] = standingJson(zone.offered);
    one["eaten"] = standingJson(zone.eaten);
    one["source"] = zone.origin.source;
    one["provenance"] = animal::symbolOf(zone.origin.provenance);
    one["model_species"] = zone.origin.modelSpecies;
  }
  return json;
}

std::string_view wordFor(health::DoseAnswer answer) {
  switch (answer) {
    case health::DoseAnswer::NothingNeeded:
      return "nothing-needed";
    case health::DoseAnswer::Found:
      return "found";
    case health::DoseAnswer::NotByThisFood:
      return "not-by-this-food";
    case health::DoseAnswer::CrossesALimit:
      return "crosses-a-limit";
    case health::DoseAnswer::NoTarget:
      return "no-target";
    case health::DoseAnswer::ContentUnknown:
      return "content-unknown";
  }
  return "";
}

Json doseJson(const health::Dose& dose) {
  Json json{{"answer", wordFor(dose.answer)},
            {"grams_in_bowl", toJson(dose.grams)},
            {"exact_grams", toJson(dose.exact)},
            {"upper_limits_allow_grams", toJson(dose.most)}};
  json["crossed"] = dose.crossed;
  json["crossed_if_all_eaten"] = dose.crossedIfAllEaten;
  return json;
}

Json adviceJson(const health::SupplementAdvice& advice) {
  Json json{{"food", advice.food}, {"retained", toJson(advice.retained)}, {"eaten", toJson(advice.eaten)}};
  json["dose"] = doseJson(advice.dose);
  json["ca_p_before"] = toJson(advice.caPBefore);
  json["ca_p_after"] = toJson(advice.caPAfter);
  json["after"] = zonesJson(advice.after);
  json["sensitivity"] = Json::array();
  for (const health::DoseSensitivity& other : advice.sensitivity)
    json["sensitivity"].push_back({{"retained", toJson(other.retained)},
                                   {"eaten", toJson(other.eaten)},
                                   {"dose", doseJson(other.dose)},
                                   {"ca_p_with_the_dose_above", toJson(other.caPAtAnswer)}});
  return json;
}

Json bloodJson(const BloodLine& line) {
  const health::BloodValue& value = line.value;
  const health::BloodUnit common = health::commonUnit(value.analyte);
  return {{"day", isoDate(line.day)},
          {"of", line.who},
          {"analyte", animal::symbolOf(value.analyte)},
          {"value", toJson(value.value)},
          {"unit", health::symbolOf(value.unit)},
          {"lab_low", toJson(value.low)},
          {"lab_high", toJson(value.high)},
          {"in_common_unit", toJson(health::inUnit(value, common))},
          {"common_unit", health::symbolOf(common)}};
}

std::string_view wordFor(health::DifferenceKind kind) {
  switch (kind) {
    case health::DifferenceKind::NewFood:
      return "new-food";
    case health::DifferenceKind::MoreThanUsual:
      return "more-than-usual";
    case health::DifferenceKind::LessThanUsual:
      return "less-than-usual";
    case health::DifferenceKind::NotOffered:
      return "not-offered";
    case health::DifferenceKind::SwappedIn:
      return "swapped-in";
    case health::DifferenceKind::NewLot:
      return "new-lot";
    case health::DifferenceKind::LeftoverMissing:
      return "leftover-missing";
  }
  return "";
}

Json linkJson(const health::FoodLink& link) {
  Json json{{"food", link.food},
            {"eaten_sign", link.days.eatenSign},
            {"eaten_no_sign", link.days.eatenWell},
            {"not_eaten_sign", link.days.withoutSign},
            {"not_eaten_no_sign", link.days.withoutWell}};
  json["comparable"] = link.days.comparable();
  json["fisher_two_sided"] = toJson(link.test.twoSided);
  json["fisher_one_sided"] = toJson(link.test.oneSided);
  json["corrected"] = toJson(link.corrected);
  json["risk_ratio"] = link.risk ? Json{{"value", toJson(link.risk->ratio)},
                                        {"low", toJson(link.risk->low)},
                                        {"high", toJson(link.risk->high)},
                                        {"half_added", link.risk->halfAdded}}
                                 : Json();
  json["pointed_out"] = link.pointedOut;
  json["new_food"] = link.newFood;
  json["always_with"] = link.alwaysWith;
  return json;
}

}  // namespace

std::string writeCalcium(const CalciumPage& page) {
  const health::CalciumReview& review = page.review;
  Json json = subjectJson("tarebowl-calcium/1", page.subject);
  json["from"] = isoDate(review.from);
  json["to"] = isoDate(review.to);
  json["days"] = {{"in_period", review.daysOfPeriod},
                  {"with_bowls", review.daysWithBowls},
                  {"complete", review.completeDays}};
  json["profile"] = page.profile.empty() ? Json() : Json(page.profile);
  json["ca_p"] = {{"offered", toJson(review.ratioOffered)},
                  {"eaten", toJson(review.ratioEaten)},
                  {"sd", review.ratioEaten ? toJson(review.ratioSd) : Json()}};
  json["ca_p"]["days"] = Json::array();
  for (const health::RatioDay& day : review.ratio)
    json["ca_p"]["days"].push_back({{"day", isoDate(day.day)},
                                    {"offered", toJson(day.offered)},
                                    {"eaten", toJson(day.eaten)},
                                    {"sd", day.eaten ? toJson(day.sd) : Json()},
                                    {"rolling_7_days", toJson(day.rolling)}});
  json["nutrients"] = Json::array();
  for (const health::Strand& strand : review.strands) json["nutrients"].push_back(strandJson(strand));
  json["zones"] = zonesJson(review.zones);
  json["oxalate"] = {{"could_bind", toJson(review.oxalate.couldBind)},
                     {"known", toJson(review.oxalate.known)}};
  json["phytate"] = {{"of_phosphorus", toJson(review.phytate.ofPhosphorus)},
                     {"known", toJson(review.phytate.known)}};
  json["supplement"] = review.advice ? adviceJson(*review.advice) : Json();
  json["masses"] = Json::array();
  for (const MassLine& mass : page.masses)
    json["masses"].push_back({{"day", isoDate(mass.day)}, {"of", mass.who}, {"kg", toJson(mass.kilograms)}});
  json["blood"] = Json::array();
  for (const BloodLine& line : page.blood) json["blood"].push_back(bloodJson(line));
  json["diets"] = Json::array();
  for (const DietLine& diet : page.diets)
    json["diets"].push_back({{"from", isoDate(diet.day)}, {"diet", diet.diet}, {"version", diet.version}});
  json["cautions"] = cautionsOf(page);
  return toText(json);
}

std::string writeLookBack(const LookBackPage& page) {
  const health::LookBack& found = page.lookBack;
  Json json = subjectJson("tarebowl-look-back/1", page.subject);
  json["sign"] = {{"kind", animal::symbolOf(page.kind)}, {"day", isoDate(found.sign.day)}};
  json["hours"] = found.hours;
  json["compared_from"] = isoDate(page.from);
  json["compared_to"] = isoDate(page.to);
  json["days"] = {{"with_sign", found.signDays},
                  {"without_sign", found.wellDays},
                  {"left_out_no_intake", found.withoutIntake},
                  {"left_out_same_episode", found.sameEpisode}};
  json["self_controlled"] = true;
  json["false_rate"] = toJson(page.rule.falseRate);
  json["confidence"] = toJson(page.rule.confidence);
  json["foods_compared"] = found.compared;
  json["intake_before_the_sign"] = found.signHasIntake;
  json["foods"] = Json::array();
  for (const health::FoodLink& link : found.foods) json["foods"].push_back(linkJson(link));
  json["differences"] = Json::array();
  for (const health::Difference& difference : found.differences)
    json["differences"].push_back({{"kind", wordFor(difference.kind)},
                                   {"food", difference.food},
                                   {"grams", toJson(difference.now)},
                                   {"usual_grams", toJson(difference.usual)}});
  json["caution"] = kAssociation;
  return toText(json);
}

}  // namespace tarebowl::exchange
