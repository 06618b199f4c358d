// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/comparison_command.h"

#include "app/difference_text.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/diet/diet_words.h"
#include "core/exchange/wording.h"
#include "core/transfer/desk_sheet.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Json = nlohmann::ordered_json;
using exchange::shortNumber;
using store::Collection;
using transfer::DeskDiet;

struct CompareWords {
  std::string collection{};
  std::string diet{};
  int from = 0;  ///< version
  int to = 0;    ///< 0: the newest
  std::optional<quantity::Date> day{};
  bool table = false;
};

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

int compareVersions(const CompareWords& words, const Streams& streams) {
  const Collection collection = openForReading(words.collection);
  const DeskDiet before = deskOf(collection, {words.diet, words.from}, dayOf(words.day));
  const DeskDiet after = deskOf(collection, {words.diet, words.to}, dayOf(words.day));
  const auto found = diet::differences(before.version.record.version, after.version.record.version);
  const std::array sheets{transfer::sheetOf(before), transfer::sheetOf(after)};
  Json json{{"format", "tarebowl-comparison/1"},
            {"diet", words.diet},
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
  if (!words.table) {
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

}  // namespace

void defineCompare(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<CompareWords>();
  CLI::App& command =
      *app.add_subcommand("compare", "What one version of a diet says otherwise than another");
  addCollectionFile(command, words->collection);
  command.add_option("--diet", words->diet, "The code of a diet of the collection")->required();
  command.add_option("--from", words->from, "The version before")
      ->required()
      ->check(CLI::Range(1, kMostVersions));
  command.add_option("--to", words->to, "The version after (default: the newest)")
      ->check(CLI::Range(1, kMostVersions));
  addDay(command, words->day);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return compareVersions(*words, streams); });
}

}  // namespace tarebowl::app
