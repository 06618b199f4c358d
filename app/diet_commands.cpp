// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/diet_commands.h"

#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/result_table.h"
#include "app/text_table.h"
#include "core/diet/diet_words.h"
#include "core/diet/food_safety.h"
#include "core/diet/judged.h"
#include "core/diet/locked.h"
#include "core/exchange/diet_json.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <ostream>

namespace tarebowl::app {

namespace {

using Json = nlohmann::ordered_json;
using store::Collection;
using transfer::DeskDiet;

std::string toText(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

Json versionJson(const store::VersionLine& line) {
  Json json{{"number", line.number}, {"state", animal::symbolOf(line.state)}};
  if (line.fedFrom) json["fed_from"] = quantity::isoDate(*line.fedFrom);
  return json;
}

std::string versionsText(const std::vector<store::VersionLine>& lines, const std::string& diet) {
  std::string text;
  for (const store::VersionLine& line : lines)
    if (line.diet == diet)
      text += fmt::format("{}{} {}", text.empty() ? "" : ", ", line.number, animal::symbolOf(line.state));
  return text;
}

int listAll(const Command& command, const Collection& collection, const Streams& streams) {
  const auto lines = store::listVersions(collection);
  Json json{{"format", "tarebowl-diets/1"}, {"diets", Json::array()}};
  TextTable table({{"diet"}, {"name"}, {"group"}, {"versions"}, {"fed"}});
  for (const store::StoredDiet& diet : store::listDiets(collection)) {
    const auto& [code, name, group, note, invented] = diet.record;
    if (!command.group.empty() && group != command.group) continue;
    const auto fed = store::fedOn(collection, code, dayOf(command));
    Json entry{{"code", code}, {"name", name}, {"group", group}};
    if (!note.empty()) entry["note"] = note;
    if (invented) entry["invented"] = true;
    entry["fed"] = fed ? Json(fed->record.version.number) : Json(nullptr);
    entry["versions"] = Json::array();
    for (const store::VersionLine& line : lines)
      if (line.diet == code) entry["versions"].push_back(versionJson(line));
    json["diets"].push_back(std::move(entry));
    table.addRow({code, name, group, versionsText(lines, code),
                  fed ? std::to_string(fed->record.version.number) : "none"});
  }
  streams.out << (command.table ? table.text() : toText(json));
  return kDone;
}

int showOne(const Command& command, const Collection& collection, const Streams& streams) {
  const DeskDiet desk = deskOf(command, collection, command.version);
  const diet::DietSolution judged = diet::judged(desk.made.problem, desk.made.amounts);
  tellNotices(desk, streams.err);
  if (command.table) {
    streams.out << judgementTable(desk.made.problem, judged);
    return kDone;
  }
  const exchange::DietFile file{.diet = desk.diet.record, .versions = {desk.version.record.version}};
  Json json{{"format", "tarebowl-version/1"}, {"diet", Json::parse(exchange::writeDiet(file))}};
  json["result"] = Json::parse(exchange::writeResult(desk.made.problem, judged));
  json["missing_foods"] = desk.made.missingFoods;
  json["foods_changed"] = desk.foodsChanged;
  if (desk.newerProfile)
    json["newer_profile"] = {{"code", desk.newerProfile->code}, {"version", desk.newerProfile->version}};
  streams.out << toText(json);
  return kDone;
}

}  // namespace

int showDiets(const Command& command, const Streams& streams) {
  const Collection collection = openForReading(command.file.value());
  return command.diet.empty() ? listAll(command, collection, streams) : showOne(command, collection, streams);
}

diet::BalanceProblem dietProblemOf(const Command& command, const Streams& streams) {
  const Collection collection = openForReading(command.file.value());
  const DeskDiet desk = deskOf(command, collection, command.version);
  tellNotices(desk, streams.err);
  for (const diet::FoodFinding& finding : diet::findingsOn(desk.made.problem))
    if (finding.forbids())
      streams.err << fmt::format("not given: {} ({}: {})\n", desk.made.problem.foods[finding.food].id,
                                 finding.ban, finding.reason);
  return diet::withLocked(desk.made.problem, desk.made.amounts, desk.made.locked);
}

}  // namespace tarebowl::app
