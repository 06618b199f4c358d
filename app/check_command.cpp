// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_command.h"

#include "app/author.h"
#include "app/check_sentences.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "core/exchange/table_reports.h"
#include "core/exchange/wording.h"
#include "core/store/checked_foods.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct CheckWords {
  std::string collection{};
  bool table = false;
};

int checkCollection(const CheckWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const store::CheckedFoods read = store::readForChecks(collection);
  std::vector<exchange::CheckedName> names;
  for (const food::FoodLine& line : read.lines) names.push_back({line.code, line.name, line.form});
  const auto findings = food::checkFoods(read.foods, today());
  if (words.table) {
    for (const food::FoodFinding& finding : findings) streams.out << sentenceOf(finding, names) << '\n';
    streams.out << fmt::format("{} about {}\n", exchange::counted(findings.size(), "doubt", "doubts"),
                               exchange::counted(names.size(), "food", "foods"));
  } else {
    streams.out << exchange::writeFindings(findings, names);
  }
  return kDone;
}

}  // namespace

void defineCheck(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<CheckWords>();
  CLI::App& command = *app.add_subcommand("check", "Name what a careful analyst would doubt");
  addCollectionFile(command, words->collection);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return checkCollection(*words, streams); });
}

}  // namespace tarebowl::app
