// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/salvage_command.h"

#include "app/author.h"
#include "app/json_text.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/store/salvage.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct SalvageWords {
  std::string damaged{};
  std::string fresh{};
  bool table = false;
};

std::string toJson(const store::SalvageReport& report, const SalvageWords& words) {
  nlohmann::ordered_json json{{"format", "tarebowl-salvage/1"},
                              {"from", words.damaged},
                              {"to", words.fresh},
                              {"nothing_lost", report.isWhole()},
                              {"newest_writes_lost", report.newestWritesLost},
                              {"pages_without_table", report.pagesWithoutTable}};
  json["tables"] = nlohmann::ordered_json::array();
  for (const store::SalvagedTable& table : report.tables)
    json["tables"].push_back({{"table", table.name},
                              {"saved", table.saved},
                              {"doubtful", table.doubtful},
                              {"unreadable", table.unreadable},
                              {"left_out", table.leftOut},
                              {"place_unknown", table.whereUnknown}});
  return toText(json);
}

std::string numberOrNothing(std::size_t number) {
  return number == 0 ? "" : std::to_string(number);
}

/// Tables that held nothing and lost nothing are not told.
std::string toTable(const store::SalvageReport& report, const SalvageWords& words) {
  using Align = TextTable::Align;
  TextTable rows({{"table"},
                  {"saved", Align::Right},
                  {"doubtful", Align::Right},
                  {"unreadable", Align::Right},
                  {"left out", Align::Right},
                  {""}});
  for (const store::SalvagedTable& table : report.tables) {
    if (table.saved == 0 && table.isWhole()) continue;
    rows.addRow({table.name, std::to_string(table.saved), numberOrNothing(table.doubtful),
                 numberOrNothing(table.unreadable), numberOrNothing(table.leftOut),
                 table.whereUnknown ? "its place is lost; there may have been more" : ""});
  }
  std::string text = rows.text();
  text += report.isWhole()
              ? "\nNothing is missing, as far as can be told.\n"
              : "\nSomething is missing. Doubtful rows lay beside damaged ones: look at them. Rows are left "
                "out where what they belong to is lost.\n";
  if (report.newestWritesLost) text += "What was written last could not be read.\n";
  if (report.pagesWithoutTable > 0)
    text += fmt::format("Pages that no table could be told for: {}.\n", report.pagesWithoutTable);
  return text + fmt::format("{} is a new collection; {} is as it was.\n", words.fresh, words.damaged);
}

int salvageCollection(const SalvageWords& words, const Streams& streams) {
  const store::SalvageReport report = store::salvage(words.damaged, words.fresh, {whoIsThere(), nowInUtc()});
  streams.out << (words.table ? toTable(report, words) : toJson(report, words));
  return kDone;
}

}  // namespace

void defineSalvage(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<SalvageWords>();
  CLI::App& command = *app.add_subcommand(
      "salvage",
      "Copy what can still be read of a damaged collection into a new one, and say what could not");
  addCollectionFile(command, words->damaged);
  command.add_option("NEW", words->fresh, "The collection to make, NAME.tarebowl")->required();
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen,
               [words](const Streams& streams) { return salvageCollection(*words, streams); });
}

}  // namespace tarebowl::app
