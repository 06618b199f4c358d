// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/diet_commands.h"

#include "app/author.h"
#include "app/difference_text.h"
#include "app/not_counted.h"
#include "app/open_collection.h"
#include "app/result_table.h"
#include "app/text_table.h"
#include "core/diet/diet_words.h"
#include "core/diet/food_safety.h"
#include "core/diet/judged.h"
#include "core/diet/locked.h"
#include "core/exchange/diet_json.h"
#include "core/exchange/json_document.h"
#include "core/exchange/text_file.h"
#include "core/exchange/wording.h"
#include "core/transfer/desk_sheet.h"
#include "core/transfer/diet_import.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <ostream>

namespace tarebowl::app {

namespace {

using Json = nlohmann::ordered_json;
using exchange::shortNumber;
using store::Collection;
using transfer::DeskDiet;

std::string toText(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

std::vector<store::StoredVersion> versionsOf(const Command& command, const Collection& collection) {
  if (!store::findDiet(collection, command.diet))
    throw UsageError(fmt::format("--diet: there is no diet {} in {} (see tarebowl diets)", command.diet,
                                 collection.file().string()));
  return store::versionsOfDiet(collection, command.diet);
}

/// 0: the newest.
DeskDiet deskOf(const Command& command, const Collection& collection, int number) {
  const auto versions = versionsOf(command, collection);
  const auto found = std::find_if(versions.rbegin(), versions.rend(), [number](const auto& version) {
    return number == 0 || version.record.version.number == number;
  });
  if (found == versions.rend())
    throw UsageError(number == 0 ? command.diet + " has no version yet"
                                 : fmt::format("there is no version {} of {}", number, command.diet));
  return transfer::readDesk(collection, found->id, dayOf(command)).value();
}

/// What a person must know before trusting the numbers.
void tellNotices(const DeskDiet& desk, std::ostream& out) {
  for (const std::string& food : desk.made.missingFoods)
    out << fmt::format("left out: {} (there is no such food in the collection)\n", food);
  if (desk.profileMissing) out << "the version names no targets that are there: only energy is judged\n";
  if (desk.newerProfile)
    out << fmt::format("the group is fed by {} {} now, and this version is judged by {} {}\n",
                       desk.newerProfile->code, desk.newerProfile->version,
                       desk.version.record.version.profile.code, desk.version.record.version.profile.version);
  for (const std::string& food : desk.foodsChanged)
    out << fmt::format("changed since the approval: values of {}\n", food);
  for (const std::string& rule : desk.made.boundsOfNoRule)
    out << fmt::format("not counted: the bound of {} (the targets state no such rule)\n", rule);
  tellNotCounted(desk.made.notCounted, out);
}

void writeWhole(const std::string& file, const std::string& text) {
  std::ofstream out(file, std::ios::binary);
  out << text;
  out.flush();
  if (!out) throw UsageError(file + ": cannot be written");
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

Json differenceJson(const diet::VersionDifference& difference) {
  Json json{{"kind", animal::symbolOf(difference.kind)}};
  const auto put = [&](const char* key, const std::string& text) {
    if (!text.empty()) json[key] = text;
  };
  put("subject", difference.subject);
  put("meal", difference.meal);
  put("food", difference.food);
  if (difference.before) json["before"] = *difference.before;
  if (difference.after) json["after"] = *difference.after;
  put("text_before", difference.textBefore);
  put("text_after", difference.textAfter);
  json["sentence"] = sentenceOf(difference);
  return json;
}

/// A rung of either ladder.
struct Rung {
  std::string id;
  const exchange::SheetTarget* before = nullptr;
  const exchange::SheetTarget* after = nullptr;
};

std::vector<Rung> rungsOf(const exchange::DietSheet& before, const exchange::DietSheet& after) {
  std::vector<Rung> rungs;
  for (const exchange::SheetTarget& target : before.targets) rungs.push_back({target.id, &target, nullptr});
  for (const exchange::SheetTarget& target : after.targets) {
    const auto known = std::ranges::find(rungs, target.id, &Rung::id);
    if (known == rungs.end())
      rungs.push_back({target.id, nullptr, &target});
    else
      known->after = &target;
  }
  return rungs;
}

std::string cellOf(const exchange::SheetTarget* target) {
  return target == nullptr ? "not judged" : target->valueText + ' ' + target->state;
}

Json rungJson(const exchange::SheetTarget* target) {
  if (target == nullptr) return nullptr;
  return {{"value", target->value ? Json(*target->value) : Json(nullptr)},
          {"unit", target->unit},
          {"state", target->state}};
}

}  // namespace

int showDiets(const Command& command, const Streams& streams) {
  const Collection collection = openForReading(command.file.value());
  return command.diet.empty() ? listAll(command, collection, streams) : showOne(command, collection, streams);
}

int compareVersions(const Command& command, const Streams& streams) {
  const Collection collection = openForReading(command.file.value());
  const DeskDiet before = deskOf(command, collection, command.version);
  const DeskDiet after = deskOf(command, collection, command.otherVersion);
  const auto found = diet::differences(before.version.record.version, after.version.record.version);
  const exchange::DietSheet sheets[]{transfer::sheetOf(before), transfer::sheetOf(after)};
  Json json{{"format", "tarebowl-comparison/1"},
            {"diet", command.diet},
            {"from", before.version.record.version.number},
            {"to", after.version.record.version.number}};
  json["differences"] = Json::array();
  for (const diet::VersionDifference& difference : found)
    json["differences"].push_back(differenceJson(difference));
  TextTable table({{"Target"},
                   {fmt::format("version {}", before.version.record.version.number)},
                   {fmt::format("version {}", after.version.record.version.number)}});
  for (const Rung& rung : rungsOf(sheets[0], sheets[1])) {
    json["ladder"].push_back(
        {{"id", rung.id}, {"from", rungJson(rung.before)}, {"to", rungJson(rung.after)}});
    table.addRow({rung.id, cellOf(rung.before), cellOf(rung.after)});
  }
  const auto cost = [](const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); };
  json["cost_per_animal_and_day"] = {{"from", cost(sheets[0].costPerDay)},
                                     {"to", cost(sheets[1].costPerDay)}};
  if (!command.table) {
    streams.out << toText(json);
    return kDone;
  }
  for (const exchange::DietSheet& sheet : sheets) streams.out << sheet.title << '\n';
  streams.out << (found.empty() ? "\nBoth say the same.\n" : "\n");
  for (const diet::VersionDifference& difference : found) streams.out << sentenceOf(difference) << '\n';
  streams.out << '\n'
              << table.text()
              << fmt::format("Cost per animal and day: {} → {}\n\n", shortNumber(sheets[0].costPerDay),
                             shortNumber(sheets[1].costPerDay))
              << exchange::kCaution;
  return kDone;
}

int writeSheet(const Command& command, const Streams& streams) {
  const Collection collection = openForReading(command.file.value());
  int number = command.version;
  if (number == 0)
    if (const auto fed = store::fedOn(collection, command.diet, dayOf(command)))
      number = fed->record.version.number;
  const DeskDiet desk = deskOf(command, collection, number);
  const exchange::DietSheet sheet = transfer::sheetOf(desk);
  const std::filesystem::path file(command.tableFile);
  if (file.extension() == ".xlsx") {
    exchange::writeSheetXlsx(sheet, file);
  } else if (file.extension() == ".html") {
    writeWhole(command.tableFile, exchange::sheetAsHtml(sheet));
  } else {
    throw UsageError(command.tableFile + ": expected NAME.html or NAME.xlsx");
  }
  tellNotices(desk, streams.err);
  streams.out << fmt::format("{} is written to {}\n", sheet.title, command.tableFile);
  return kDone;
}

int exportDiet(const Command& command, const Streams& streams) {
  const Collection collection = openForReading(command.file.value());
  const DeskDiet desk = deskOf(command, collection, command.version);
  std::string text;
  if (command.asProblem) {
    tellNotices(desk, streams.err);
    text = exchange::writeProblem(diet::withLocked(desk.made.problem, desk.made.amounts, desk.made.locked));
  } else {
    exchange::DietFile file{.diet = desk.diet.record};
    for (const store::StoredVersion& version : versionsOf(command, collection))
      if (command.version == 0 || version.record.version.number == command.version)
        file.versions.push_back(version.record.version);
    text = exchange::writeDiet(file);
  }
  writeWhole(command.tableFile, text);
  streams.out << fmt::format("{} is written to {}\n", command.diet, command.tableFile);
  return kDone;
}

bool isDietFile(const std::string& file) {
  const nlohmann::json document =
      exchange::parseDocument(exchange::readText(std::filesystem::path(file)), file);
  return document.is_object() && document.contains("format") &&
         document.at("format") == exchange::kDietFormat;
}

int importDiet(const Command& command, const Streams& streams) {
  const exchange::DietFile file = exchange::readDiet(command.tableFile);
  Collection collection = Collection::open(command.file.value(), nowInUtc());
  if (command.dryRun) {
    streams.out << fmt::format("planned, nothing written: {} with {} versions\n", file.diet.code,
                               file.versions.size());
    return kDone;
  }
  transfer::importDiet(collection, file, {whoIsThere(), nowInUtc()});
  streams.out << fmt::format("{} is there with {} versions\n", file.diet.code, file.versions.size());
  return kDone;
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
