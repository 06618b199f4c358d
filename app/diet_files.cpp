// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/diet_files.h"

#include "app/author.h"
#include "app/open_collection.h"
#include "app/open_diet.h"
#include "app/written_file.h"
#include "core/diet/locked.h"
#include "core/exchange/diet_json.h"
#include "core/exchange/json_document.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/text_file.h"
#include "core/transfer/diet_import.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <ostream>

namespace tarebowl::app {

using store::Collection;
using transfer::DeskDiet;

int exportDiet(const ExportWords& words, const Streams& streams) {
  const Collection collection = openForReading(words.collection);
  const DeskDiet desk = deskOf(collection, words.diet, today());
  std::string text;
  if (words.asProblem) {
    tellNotices(desk, streams.err);
    text = exchange::writeProblem(diet::withLocked(desk.made.problem, desk.made.amounts, desk.made.locked));
  } else {
    exchange::DietFile file{.diet = desk.diet.record};
    for (const store::StoredVersion& version : versionsOf(collection, words.diet.diet))
      if (words.diet.version == 0 || version.record.version.number == words.diet.version)
        file.versions.push_back(version.record.version);
    text = exchange::writeDiet(file);
  }
  writeWhole(words.file, text);
  streams.out << fmt::format("{} is written to {}\n", words.diet.diet, words.file);
  return kDone;
}

bool isDietFile(const std::string& file) {
  const nlohmann::json document =
      exchange::parseDocument(exchange::readText(std::filesystem::path(file)), file);
  return document.is_object() && document.contains("format") &&
         document.at("format") == exchange::kDietFormat;
}

int importDiet(const ImportWords& words, const Streams& streams) {
  const exchange::DietFile file = exchange::readDiet(words.file);
  Collection collection = Collection::open(words.collection, nowInUtc(), openingByHand());
  if (words.dryRun) {
    streams.out << fmt::format("planned, nothing written: {} with {} versions\n", file.diet.code,
                               file.versions.size());
    return kDone;
  }
  transfer::importDiet(collection, file, {whoIsThere(), nowInUtc()});
  streams.out << fmt::format("{} is there with {} versions\n", file.diet.code, file.versions.size());
  return kDone;
}

}  // namespace tarebowl::app
