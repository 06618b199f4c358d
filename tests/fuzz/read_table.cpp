// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/read_table.h"

#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"
#include "tests/fuzz/file_in_memory.h"

#include <cstdlib>
#include <functional>
#include <string>

namespace tarebowl::fuzz {

namespace {

using namespace tarebowl::exchange;

/// Takes everything and keeps nothing.
class Nowhere : public ImportSink {
 public:
  FoodOutcome put(const ImportedFood& food) override {
    if (food.name.empty() || (food.values.empty() && food.others.empty())) std::abort();
    return {.valuesNew = food.values.size() + food.others.size()};
  }
};

void complainOnOneLine(const std::function<void()>& work) {
  try {
    work();
  } catch (const FormatError& error) {
    if (std::string(error.what()).find('\n') != std::string::npos) std::abort();
  }
}

}  // namespace

void readTable(const TableInput& table) {
  complainOnOneLine([&] {
    const MappingGuess guess = guessMapping(table);
    if (!(parseMapping(writeMapping(guess.mapping), "written") == guess.mapping)) std::abort();
    Nowhere sink;
    const ImportPlan plan = importTable(table, guess.mapping, sink);
    if (!plan.mayBeWritten()) throwFirstRefusal(plan, "fuzz");
  });
}

void readSpreadsheet(std::span<const std::uint8_t> bytes) {
  const FileInMemory file(bytes);
  complainOnOneLine([&] {
    const TableInput table = tableFile(file.path());
    if (!table.spreadsheet.empty()) readTable(table);
  });
}

}  // namespace tarebowl::fuzz
