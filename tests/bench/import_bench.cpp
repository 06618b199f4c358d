// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Tables into a collection. SR28 whole (8,789 foods, 679,045 values) by the importer, as the command line
// does it, beside the sqlite3 shell's own .import of the same values into one indexed table; and how much
// memory a process holds at most while it imports a table, and one four times as long. Without the table
// (TAREBOWL_REFERENCE_DIR) or the shell those are skipped.
#include "core/exchange/mapping_guess.h"
#include "core/transfer/table_import.h"
#include "tests/bench/bench_files.h"
#include "tests/core/transfer/endless_table.h"
#include "tests/reference/imported_tables.h"
#include "tests/reference/reference_data.h"
#include "tests/reference/sr28.h"

#include <benchmark/benchmark.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

namespace tarebowl::bench {
namespace {

namespace fs = std::filesystem;

/// food,nutrient,value,n,se,source,derivation; made once.
fs::path valuesCsv() {
  static const fs::path kFile = [] {
    const auto packed = reference::referenceFile(reference::kSr28Amounts);
    if (!packed) return fs::path();
    const fs::path csv = workFile("values.csv");
    std::ofstream(csv, std::ios::binary) << reference::unpacked(*packed);
    return csv;
  }();
  return kFile;
}

/// Read from a file, as the shell does.
std::optional<reference::PublishedTable> sr28() {
  auto table = reference::sr28Table();
  if (!table) return std::nullopt;
  const fs::path folder = table->input.folder;
  table->input = exchange::tableFile(valuesCsv());
  table->input.folder = folder;
  return table;
}

void importSr28(benchmark::State& state) {
  const auto table = sr28();
  if (!table) return state.SkipWithError("SR28 is not here");
  const fs::path file = workFile("sr28.tarebowl");
  for (auto step : state) {
    state.PauseTiming();
    store::Collection collection = newCollection(file);
    state.ResumeTiming();
    const auto imported = transfer::importTable(collection, {table->input, table->mapping, "SR28.csv"},
                                                kBench, transfer::Keep::WhereItMay);
    if (!imported.change) state.SkipWithError("SR28 was refused");
    state.counters["records"] = static_cast<double>(imported.plan.records);
    state.counters["values"] = static_cast<double>(imported.plan.valuesNew);
  }
  state.counters["MB"] = megabytes(file);
}

/// The same table again: every value is looked for and nothing is written.
void importSr28Again(benchmark::State& state) {
  const auto table = sr28();
  const fs::path file = workFile("sr28.tarebowl");
  if (!table || !fs::exists(file)) return state.SkipWithError("SR28 was not imported before");
  store::Collection collection = store::Collection::open(file, kBench.at);
  for (auto step : state) {
    const auto imported = transfer::importTable(collection, {table->input, table->mapping, "SR28.csv"},
                                                kBench, transfer::Keep::WhereItMay);
    if (imported.change) state.SkipWithError("something was written");
  }
}

void importWithTheShell(benchmark::State& state) {
  if (valuesCsv().empty() || !runs("sqlite3 --version >/dev/null"))
    return state.SkipWithError("SR28 or the sqlite3 shell is not here");
  const fs::path file = workFile("shell.db");
  const std::string command =
      "sqlite3 -csv '" + file.string() +
      "' 'CREATE TABLE v (food INTEGER, nutrient INTEGER, value REAL, n INTEGER, se REAL, source INTEGER, "
      "derivation TEXT, PRIMARY KEY (food, nutrient))' \".import --skip 1 '" +
      valuesCsv().string() + "' v\"";
  for (auto step : state) {
    state.PauseTiming();
    fs::remove(file);
    state.ResumeTiming();
    if (!runs(command)) state.SkipWithError("the shell failed");
  }
  state.counters["MB"] = megabytes(file);
}

/// Foods of sixty values each, in a process of its own, which says how much it held at most.
void memoryOfImport(benchmark::State& state, exchange::TableInput (*made)(std::size_t, std::size_t)) {
  const auto foods = static_cast<std::size_t>(state.range(0));
  for (auto step : state) {
    const pid_t child = fork();
    if (child == 0) {
      store::Collection collection = newCollection(workFile("memory.tarebowl"));
      const exchange::TableInput table = made(foods, 60);
      const auto imported =
          transfer::importTable(collection, {table, exchange::guessMapping(table).mapping, "made.csv"},
                                kBench, transfer::Keep::WhereItMay);
      _exit(imported.change ? 0 : 1);
    }
    int status = 0;
    rusage usage{};
    wait4(child, &status, 0, &usage);
    if (status != 0) state.SkipWithError("the import failed");
    state.counters["peak_MB"] = static_cast<double>(usage.ru_maxrss) / 1024.0;
  }
  state.counters["values"] = static_cast<double>(foods * 60);
}

// First: a child begins with what its parent holds.
BENCHMARK_CAPTURE(memoryOfImport, long_table, transfer::longTable)
    ->Arg(2'500)
    ->Arg(10'000)
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK_CAPTURE(memoryOfImport, wide_table, transfer::wideTable)
    ->Arg(2'500)
    ->Arg(10'000)
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK(importWithTheShell)->Iterations(3)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(importSr28)->Iterations(3)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(importSr28Again)->Iterations(1)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace tarebowl::bench

BENCHMARK_MAIN();
