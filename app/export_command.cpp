// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export_command.h"

#include "app/command_line.h"
#include "app/diet_files.h"
#include "app/open_collection.h"
#include "app/profile_files.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/wording.h"
#include "core/store/food_reading.h"
#include "core/transfer/table_export.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

int exportFoods(const ExportWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const exchange::ExportSource each = transfer::foodsOf(collection);
  const auto layout = words.wide ? exchange::TableLayout::Wide : exchange::TableLayout::Long;
  const std::filesystem::path file(words.file);
  std::size_t values = 0;
  if (file.extension() == ".xlsx") {
    values = exchange::writeXlsx(each, layout, file);
  } else if (file.extension() == ".csv") {
    std::ofstream out(file, std::ios::binary);
    values = exchange::writeCsv(each, layout, out);
    out.close();
    if (!out) throw exchange::FormatError(file.string(), "", "a file that can be written");
  } else {
    throw UsageError(file.string() + ": expected a name that ends with .csv or .xlsx (see tarebowl --help)");
  }
  streams.out << fmt::format("{} with {} in {}\n",
                             exchange::counted(store::countFoods(collection), "food", "foods"),
                             exchange::counted(values, "value", "values"), file.string());
  return kDone;
}

int exportFile(const ExportWords& words, const Streams& streams) {
  if (!words.diet.diet.empty()) return exportDiet(words, streams);
  return words.profile.empty() ? exportFoods(words, streams) : exportProfile(words, streams);
}

}  // namespace

void defineExport(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ExportWords>();
  CLI::App& command = *app.add_subcommand("export", "Write the foods of a collection to a table");
  addCollectionFile(command, words->collection);
  command.add_option("FILE", words->file, "NAME.csv or NAME.xlsx; with --profile or --diet NAME.json")
      ->required();
  command.add_option("--profile", words->profile,
                     "Write this target profile instead: CODE, the newest version, or CODE:VERSION");
  addDiet(command, words->diet);
  command.get_option("--diet")
      ->description("Write this diet with its versions instead, or the one version that is named")
      ->excludes("--profile");
  command
      .add_flag("--problem", words->asProblem,
                "With --diet: write the problem that the version is (tarebowl-problem/1)")
      ->needs("--diet");
  command.add_flag("--wide", words->wide,
                   "A row a food rather than a row a value; leaves out sd, n and source");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return exportFile(*words, streams); });
}

}  // namespace tarebowl::app
