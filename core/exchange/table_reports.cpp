// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_reports.h"

#include "core/exchange/numbers.h"

#include <nlohmann/json.hpp>

#include <array>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;

// In the order of the enumerators.
constexpr std::array<std::string_view, 15> kCheckWords{
    "value-over-food",  "proximates-over-whole", "proximates-do-not-close",
    "parts-over-whole", "negative-carbohydrate", "energy-disagrees",
    "scatter-too-wide", "minerals-over-ash",     "guarantee-as-mean",
    "unit-slip",        "far-from-group",        "ratio-far-from-group",
    "same-name",        "same-composition",      "stale"};
constexpr std::array<std::string_view, kImportIssues> kIssueWords{
    "bad-number",    "ragged-row",        "no-food",        "repeated-food", "repeated-value",
    "unknown-unit",  "unit-does-not-fit", "more-than-food", "bad-word",      "bad-name",
    "unlisted-food", "unknown-nutrient",  "kept-by-name",   "left-out",      "said-twice",
    "no-values",     "scatter-unread"};
constexpr std::array<std::string_view, 6> kDoubtWords{"not-understood", "second-of-nutrient",
                                                      "unit-assumed",   "decimal-mark-open",
                                                      "no-food-column", "no-value-column"};

Json remarkJson(const Remark& remark) {
  Json json{{"line", remark.line}};
  if (remark.column > 0) json["column"] = remark.column;
  if (!remark.title.empty()) json["title"] = remark.title;
  if (!remark.found.empty()) json["found"] = remark.found;
  if (remark.earlierLine > 0) json["earlier_line"] = remark.earlierLine;
  return json;
}

Json remarksJson(const ImportPlan& plan) {
  Json json = Json::array();
  for (std::size_t i = 0; i < plan.remarks.size(); ++i) {
    const RemarkGroup& group = plan.remarks[i];
    if (group.count == 0) continue;
    const auto issue = static_cast<ImportIssue>(i);
    Json entry{{"kind", symbolOf(issue)},
               {"refuses", refuses(issue)},
               {"count", group.count},
               {"first", Json::array()}};
    for (const Remark& remark : group.first) entry["first"].push_back(remarkJson(remark));
    json.push_back(std::move(entry));
  }
  return json;
}

Json foodsJson(const ImportPlan& plan) {
  constexpr std::array<std::string_view, 3> kChanges{"new", "changed", "unchanged"};
  Json json = Json::array();
  for (const PlannedFood& food : plan.firstFoods)
    json.push_back({{"line", food.line},
                    {"code", food.code},
                    {"name", food.name},
                    {"values", food.values},
                    {"change", kChanges.at(static_cast<std::size_t>(food.outcome.change))}});
  return json;
}

Json notesJson(const std::vector<GuessNote>& notes) {
  Json json = Json::array();
  for (const GuessNote& note : notes) {
    Json entry{{"doubt", symbolOf(note.doubt)}};
    if (note.column > 0) entry["column"] = note.column;
    if (!note.title.empty()) entry["title"] = note.title;
    if (note.line > 0) entry["line"] = note.line;
    json.push_back(std::move(entry));
  }
  return json;
}

Json findingJson(const food::FoodFinding& it, std::span<const CheckedName> names) {
  const CheckedName& name = names[it.food];
  Json json{
      {"code", name.code}, {"name", name.name}, {"form", name.form}, {"check", symbolOf(it.finding.code)}};
  json["severity"] = it.finding.severity == food::Severity::Refused ? "refused" : "warning";
  if (it.other) {
    json["other"] = names[*it.other].code;
    return json;
  }
  json["nutrients"] = Json::array();
  for (const food::NutrientId id : it.finding.nutrients)
    json["nutrients"].push_back(food::describe(id).tagname);
  json["found"] = toJson(it.finding.found);
  json["against"] = toJson(it.finding.against);
  if (it.groupSize > 0) {
    json["robust_z"] = toJson(it.robustZ);
    json["foods_compared"] = it.groupSize;
  }
  return json;
}

}  // namespace

std::string_view symbolOf(food::CheckCode code) {
  return kCheckWords.at(static_cast<std::size_t>(code));
}

std::string_view symbolOf(ImportIssue issue) {
  return kIssueWords.at(static_cast<std::size_t>(issue));
}

std::string_view symbolOf(GuessDoubt doubt) {
  return kDoubtWords.at(static_cast<std::size_t>(doubt));
}

std::string writeImportPlan(const ImportPlan& plan, ImportStage stage, const TableMapping& mapping,
                            const std::vector<GuessNote>& notes) {
  Json json{{"format", "tarebowl-import/1"},
            {"stage", stage == ImportStage::Planned ? "planned" : "imported"}};
  json["may_be_written"] = plan.mayBeWritten();
  json["records"] = plan.records;
  json["foods"] = {{"new", plan.foods[0]}, {"changed", plan.foods[1]}, {"unchanged", plan.foods[2]}};
  json["values"] = {
      {"new", plan.valuesNew}, {"changed", plan.valuesChanged}, {"unchanged", plan.valuesUnchanged}};
  if (plan.valuesOther > 0) json["values"]["of_unknown_nutrients"] = plan.valuesOther;
  json["nothing_known"] = plan.nothingKnown;
  json["zeros_unknown"] = plan.zerosUnknown;
  json["remarks"] = remarksJson(plan);
  json["first_foods"] = foodsJson(plan);
  json["doubts"] = notesJson(notes);
  json["mapping"] = Json::parse(writeMapping(mapping));
  return toText(json);
}

std::string writeFindings(std::span<const food::FoodFinding> findings, std::span<const CheckedName> names) {
  Json json{{"format", "tarebowl-check/1"}, {"foods", names.size()}, {"findings", Json::array()}};
  for (const food::FoodFinding& finding : findings) json["findings"].push_back(findingJson(finding, names));
  return toText(json);
}

}  // namespace tarebowl::exchange
