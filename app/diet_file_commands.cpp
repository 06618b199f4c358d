// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/author.h"
#include "app/diet_commands.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/written_file.h"
#include "core/diet/locked.h"
#include "core/exchange/diet_json.h"
#include "core/exchange/json_document.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/text_file.h"
#include "core/transfer/desk_sheet.h"
#include "core/transfer/diet_import.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <ostream>

namespace tarebowl::app {

namespace {

using store::Collection;
using transfer::DeskDiet;

}  // namespace

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

}  // namespace tarebowl::app
