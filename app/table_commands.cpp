// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/table_commands.h"

#include "app/author.h"
#include "app/check_sentences.h"
#include "app/open_collection.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/table_reports.h"
#include "core/exchange/wording.h"
#include "core/store/checked_foods.h"
#include "core/store/food_reading.h"
#include "core/transfer/table_export.h"
#include "core/transfer/table_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <ostream>

namespace tarebowl::app {

namespace {

namespace fs = std::filesystem;

exchange::TableMapping mappingAt(const std::string& file) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream) throw exchange::FormatError(file, "", "a readable mapping (tarebowl-mapping/1), found none");
  return exchange::parseMapping(std::string(std::istreambuf_iterator<char>(stream), {}), file);
}

exchange::MappingGuess mappingFor(const Command& command, const exchange::TableInput& table) {
  if (command.mapping) return {mappingAt(*command.mapping), {}};
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

}  // namespace

int importTableFile(const Command& command, const Streams& streams) {
  const exchange::TableInput table = exchange::tableFile(command.tableFile);
  const exchange::MappingGuess guess = mappingFor(command, table);
  const bool keep = !command.dryRun;
  const std::string& file = command.file.value();
  // To plan is to write and take it back: it needs no backup, but a file that can be written.
  store::Collection collection = keep ? openForWriting(file) : store::Collection::open(file, nowInUtc());
  const transfer::Imported imported = transfer::importTable(
      collection, {.input = table, .mapping = guess.mapping, .file = command.tableFile},
      {whoIsThere(), nowInUtc()}, keep ? transfer::Keep::WhereItMay : transfer::Keep::Nothing);
  const exchange::ImportPlan& plan = imported.plan;
  if (!plan.mayBeWritten()) exchange::throwFirstRefusal(plan, table.name);
  const auto stage = keep ? exchange::ImportStage::Imported : exchange::ImportStage::Planned;
  streams.out << (command.table ? planText(plan, keep)
                                : exchange::writeImportPlan(plan, stage, guess.mapping, guess.notes));
  return kDone;
}

int exportFoods(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const exchange::ExportSource each = transfer::foodsOf(collection);
  const auto layout = command.wide ? exchange::TableLayout::Wide : exchange::TableLayout::Long;
  const fs::path file(command.tableFile);
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

int checkCollection(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const store::CheckedFoods read = store::readForChecks(collection);
  std::vector<exchange::CheckedName> names;
  for (const food::FoodLine& line : read.lines) names.push_back({line.code, line.name, line.form});
  const auto findings = food::checkFoods(read.foods, today());
  if (command.table) {
    for (const food::FoodFinding& finding : findings) streams.out << sentenceOf(finding, names) << '\n';
    streams.out << fmt::format("{} about {}\n", exchange::counted(findings.size(), "doubt", "doubts"),
                               exchange::counted(names.size(), "food", "foods"));
  } else {
    streams.out << exchange::writeFindings(findings, names);
  }
  return kDone;
}

}  // namespace tarebowl::app
