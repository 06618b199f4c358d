// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/import_command.h"

#include "app/author.h"
#include "app/diet_files.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/profile_files.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/table_reports.h"
#include "core/exchange/wording.h"
#include "core/transfer/table_import.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

exchange::TableMapping mappingAt(const std::string& file) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream) throw exchange::FormatError(file, "", "a readable mapping (tarebowl-mapping/1), found none");
  return exchange::parseMapping(std::string(std::istreambuf_iterator<char>(stream), {}), file);
}

exchange::MappingGuess mappingFor(const ImportWords& words, const exchange::TableInput& table) {
  if (!words.mapping.empty()) return {mappingAt(words.mapping), {}};
  exchange::MappingGuess guess = exchange::guessMapping(table);
  for (const exchange::GuessNote& note : guess.notes)
    if (note.doubt == exchange::GuessDoubt::DecimalMarkOpen)
      throw exchange::FormatError(
          table.name, fmt::format("line {}", note.line),
          "a mapping (--map) that says whether the decimal mark is a point or a comma");
  return guess;
}

std::string planText(const exchange::ImportPlan& plan, bool kept) {
  std::string text = fmt::format("{}: {} new, {} changed, {} unchanged; {} new, {} changed, {} unchanged",
                                 kept ? "imported" : "planned, nothing written",
                                 exchange::counted(plan.foods[0], "food", "foods"), plan.foods[1],
                                 plan.foods[2], exchange::counted(plan.valuesNew, "value", "values"),
                                 plan.valuesChanged, plan.valuesUnchanged);
  if (plan.valuesOther > 0)
    text += fmt::format(", {} of these kept under the table's own name", plan.valuesOther);
  if (const std::size_t leftOut = plan.valuesLeftOut(); leftOut > 0)
    text += fmt::format("; {} left out (without --table: which, and why)", leftOut);
  const std::size_t unknown = plan.nothingKnown + plan.zerosUnknown;
  return text + fmt::format("; nothing is known in {}\n", exchange::counted(unknown, "cell", "cells"));
}

int importTableFile(const ImportWords& words, const Streams& streams) {
  const exchange::TableInput table = exchange::tableFile(words.file);
  const exchange::MappingGuess guess = mappingFor(words, table);
  const bool keep = !words.dryRun;
  // To plan is to write and take it back: it needs no backup, but a file that can be written.
  store::Collection collection = keep
                                     ? openForWriting(words.collection)
                                     : store::Collection::open(words.collection, nowInUtc(), openingByHand());
  const transfer::Imported imported = transfer::importTable(
      collection, {.input = table, .mapping = guess.mapping, .file = words.file}, {whoIsThere(), nowInUtc()},
      keep ? transfer::Keep::WhereItMay : transfer::Keep::Nothing);
  const exchange::ImportPlan& plan = imported.plan;
  if (!plan.mayBeWritten()) exchange::throwFirstRefusal(plan, table.name);
  const auto stage = keep ? exchange::ImportStage::Imported : exchange::ImportStage::Planned;
  streams.out << (words.table ? planText(plan, keep)
                              : exchange::writeImportPlan(plan, stage, guess.mapping, guess.notes));
  return kDone;
}

int importFile(const ImportWords& words, const Streams& streams) {
  if (std::filesystem::path(words.file).extension() != ".json") return importTableFile(words, streams);
  return isDietFile(words.file) ? importDiet(words, streams) : importProfile(words, streams);
}

}  // namespace

void defineImport(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ImportWords>();
  CLI::App& command = *app.add_subcommand(
      "import", "Import a table of foods; all of it or, where anything is wrong with it, nothing");
  addCollectionFile(command, words->collection);
  command
      .add_option("TABLE", words->file,
                  "CSV in any common form, XLSX, or a target profile or a diet (tarebowl-profile/1, "
                  "tarebowl-diet/1; NAME.json)")
      ->required();
  command.add_option("--map", words->mapping,
                     "How the table is read (tarebowl-mapping/1); guessed without it");
  command.add_flag("--dry-run", words->dryRun, "Say what would happen and write nothing");
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return importFile(*words, streams); });
}

}  // namespace tarebowl::app
