// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_plan.h"
#include "core/exchange/mapping_guess.h"
#include "core/exchange/problem_json.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

namespace {

using namespace tarebowl::exchange;

/// Takes everything and keeps nothing.
class Nowhere : public ImportSink {
 public:
  FoodOutcome put(const ImportedFood& food) override {
    if (food.name.empty() || food.values.empty()) std::abort();
    return {.valuesNew = food.values.size()};
  }
};

}  // namespace

// Whatever the bytes are: one line that says what is wrong, or foods with values and an account of all else.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const TableInput table = tableText(std::string(reinterpret_cast<const char*>(data), size), "fuzz");
  try {
    const MappingGuess guess = guessMapping(table);
    if (!(parseMapping(writeMapping(guess.mapping), "written") == guess.mapping)) std::abort();
    Nowhere sink;
    const ImportPlan plan = importTable(table, guess.mapping, sink);
    if (!plan.mayBeWritten()) throwFirstRefusal(plan, "fuzz");
  } catch (const FormatError& error) {
    if (std::string(error.what()).find('\n') != std::string::npos) std::abort();
  }
  return 0;
}
