// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/move_command.h"

#include "app/author.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/store/move.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct MoveWords {
  std::string source{};
  std::string target{};
  bool table = false;
};

std::string toJson(const store::MoveReport& report, const MoveWords& words) {
  nlohmann::ordered_json json{{"format", "tarebowl-move/1"},
                              {"from", words.source},
                              {"to", words.target},
                              {"was_there", report.wasThere},
                              {"aside", report.aside}};
  json["tables"] = nlohmann::ordered_json::array();
  for (const store::MovedTable& table : report.tables)
    json["tables"].push_back(
        {{"table", table.name}, {"rows", table.rows}, {"checksum", fmt::format("{:016x}", table.checksum)}});
  return toText(json);
}

/// Tables that hold nothing are not told.
std::string toTable(const store::MoveReport& report, const MoveWords& words) {
  using Align = TextTable::Align;
  TextTable rows({{"table"}, {"rows", Align::Right}, {"checksum"}});
  for (const store::MovedTable& table : report.tables)
    if (table.rows > 0)
      rows.addRow({table.name, std::to_string(table.rows), fmt::format("{:016x}", table.checksum)});
  return rows.text() + fmt::format(
                           "\nEvery row of {} stands in {} as it was.\nThe former collection was not "
                           "deleted: it lies in {}.\n",
                           words.source, words.target, report.aside);
}

int move(const MoveWords& words, const Streams& streams) {
  const store::MoveOptions options{.opening = openingByHand()};
  const store::MoveReport report =
      store::moveCollection(words.source, words.target, {whoIsThere(), nowInUtc()}, options);
  streams.out << (words.table ? toTable(report, words) : toJson(report, words));
  return kDone;
}

}  // namespace

void defineMove(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<MoveWords>();
  CLI::App& command =
      *app.add_subcommand("move", "Move a collection between a file and a server, row by row");
  command
      .add_option("FROM", words->source,
                  "Where it lies: NAME.tarebowl, or postgresql://PERSON@SERVER/DATABASE")
      ->required();
  command.add_option("TO", words->target, "Where it is to lie; nothing may be there yet")->required();
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return move(*words, streams); });
}

}  // namespace tarebowl::app
