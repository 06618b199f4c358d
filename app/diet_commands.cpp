// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/diet_commands.h"

#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/result_table.h"
#include "app/text_table.h"
#include "core/diet/diet_words.h"
#include "core/diet/judged.h"
#include "core/exchange/diet_json.h"
#include "core/store/reading.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <map>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Json = nlohmann::ordered_json;
using store::Collection;
using transfer::DeskDiet;

struct DietsWords {
  std::string collection{};
  GroupAndDay of{};
  DietWords diet{};
  bool table = false;
};

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

int listAll(const DietsWords& words, const Collection& collection, const Streams& streams) {
  struct Listed {
    std::vector<store::VersionLine> lines{};
    std::vector<store::StoredDiet> diets{};
    std::map<std::string, diet::DietVersion> fed{};
  };
  const Listed listed = store::readTogether(collection, [day = dayOf(words.of.day)](const Collection& whole) {
    store::askAhead(
        whole, [&] { return store::listVersions(whole); }, [&] { return store::listDiets(whole); });
    Listed read{.fed = store::everyDietFedOn(whole, day)};
    read.lines = store::listVersions(whole);
    read.diets = store::listDiets(whole);
    return read;
  });
  Json json{{"format", "tarebowl-diets/1"}, {"diets", Json::array()}};
  TextTable table({{"diet"}, {"name"}, {"group"}, {"versions"}, {"fed"}});
  for (const store::StoredDiet& diet : listed.diets) {
    const auto& [code, name, group, note, invented] = diet.record;
    if (!words.of.group.empty() && group != words.of.group) continue;
    const auto fed = listed.fed.find(code);
    const bool isFed = fed != listed.fed.end();
    Json entry{{"code", code}, {"name", name}, {"group", group}};
    if (!note.empty()) entry["note"] = note;
    if (invented) entry["invented"] = true;
    entry["fed"] = nullptr;
    if (isFed) entry["fed"] = fed->second.number;
    entry["versions"] = Json::array();
    for (const store::VersionLine& line : listed.lines)
      if (line.diet == code) entry["versions"].push_back(versionJson(line));
    json["diets"].push_back(std::move(entry));
    table.addRow({code, name, group, versionsText(listed.lines, code),
                  isFed ? std::to_string(fed->second.number) : "none"});
  }
  streams.out << (words.table ? table.text() : toText(json));
  return kDone;
}

int showOne(const DietsWords& words, const Collection& collection, const Streams& streams) {
  const DeskDiet desk = deskOf(collection, words.diet, dayOf(words.of.day));
  const diet::DietSolution judged = diet::judged(desk.made.problem, desk.made.amounts);
  tellNotices(desk, streams.err);
  if (words.table) {
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

int showDiets(const DietsWords& words, const Streams& streams) {
  const Collection collection = openForReading(words.collection);
  return words.diet.diet.empty() ? listAll(words, collection, streams) : showOne(words, collection, streams);
}

}  // namespace

void defineDiets(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<DietsWords>();
  CLI::App& command =
      *app.add_subcommand("diets", "List the diets of a collection, or show one with its balance");
  addCollectionFile(command, words->collection);
  addGroupAndDay(command, words->of);
  addDiet(command, words->diet);
  command.get_option("--group")->excludes("--diet");
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showDiets(*words, streams); });
}

}  // namespace tarebowl::app
