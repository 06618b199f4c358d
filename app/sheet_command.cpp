// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sheet_command.h"

#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/options.h"
#include "app/written_file.h"
#include "core/transfer/desk_sheet.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct SheetWords {
  std::string collection{};
  std::string file{};  ///< that is written
  DietWords diet{};
  std::optional<quantity::Date> day{};
};

int writeSheet(const SheetWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const transfer::DeskDiet desk = fedDeskOf(collection, words.diet, dayOf(words.day));
  const exchange::DietSheet sheet = transfer::sheetOf(desk);
  const std::filesystem::path file(words.file);
  if (file.extension() == ".xlsx") {
    exchange::writeSheetXlsx(sheet, file);
  } else if (file.extension() == ".html") {
    writeWhole(words.file, exchange::sheetAsHtml(sheet));
  } else {
    throw UsageError(words.file + ": expected NAME.html or NAME.xlsx");
  }
  tellNotices(desk, streams.err);
  streams.out << fmt::format("{} is written to {}\n", sheet.title, words.file);
  return kDone;
}

}  // namespace

void defineSheet(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<SheetWords>();
  CLI::App& command =
      *app.add_subcommand("sheet", "Write a version of a diet as a page: NAME.html or NAME.xlsx");
  addCollectionFile(command, words->collection);
  command.add_option("FILE", words->file, "NAME.html or NAME.xlsx")->required();
  addDay(command, words->day);
  addFedDiet(command, words->diet);
  command.get_option("--diet")->required();
  runWhenNamed(command, chosen, [words](const Streams& streams) { return writeSheet(*words, streams); });
}

}  // namespace tarebowl::app
