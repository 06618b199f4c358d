// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The collection file with all of SR28 in it (8,789 foods, 679,045 values), beside the sqlite3 shell's own
// .import of the same values into one indexed table. Without the table (TAREBOWL_REFERENCE_DIR) or the shell
// nothing is measured.
#include "core/food/food_index.h"
#include "core/store/food_import.h"
#include "core/store/food_reading.h"

#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using namespace tarebowl;
using namespace tarebowl::store;

const Author kBench{"bench", "2026-01-01T00:00:00Z"};

fs::path workFolder() {
  const fs::path folder = fs::temp_directory_path() / "tarebowl-bench";
  fs::create_directories(folder);
  return folder;
}

fs::path referenceFolder() {
  const char* given = std::getenv("TAREBOWL_REFERENCE_DIR");
  return given != nullptr ? fs::path(given) : fs::path(TAREBOWL_SOURCE_DIR "/../shared/reference");
}

bool runs(const std::string& command) {
  return std::system(command.c_str()) == 0;
}

/// food,nutrient,value,n,se,source,derivation without the heading; made once.
fs::path valuesCsv() {
  static const fs::path kFile = [] {
    const fs::path csv = workFolder() / "values.csv";
    const bool made = runs("gunzip -c '" + (referenceFolder() / "sr28/nut_data.csv.gz").string() +
                           "' 2>/dev/null | tail -n +2 >'" + csv.string() + "'");
    return made && fs::file_size(csv) > 0 ? csv : fs::path();
  }();
  return kFile;
}

std::vector<std::string> fieldsOf(const std::string& line) {
  std::vector<std::string> fields(1);
  for (const char c : line) {
    if (c == ',')
      fields.emplace_back();
    else
      fields.back() += c;
  }
  return fields;
}

void removeCollection(const fs::path& file) {
  for (const char* tail : {"", "-wal", "-shm"}) fs::remove(file.string() + tail);
}

std::size_t importAll(Collection& collection) {
  FoodImport import(collection, {.name = "SR28"}, kBench);
  std::map<std::string, ComponentId> components;
  std::ifstream csv(valuesCsv());
  ImportedFood food;
  for (std::string line; std::getline(csv, line);) {
    const auto fields = fieldsOf(line);
    if (food.sample.sourceCode != fields[0]) {
      food.food.code = food.food.name = food.sample.sourceCode = fields[0];
    }
    const auto [known, isNew] = components.try_emplace(fields[1]);
    if (isNew) known->second = import.component("SR28-" + fields[1], "?");
    ImportedValue value{.component = known->second, .amount = quantity::AsFedContent(std::stod(fields[2]))};
    if (const int count = std::atoi(fields[3].c_str()); count > 0) value.count = count;
    import.add(import.sample(food), value);
  }
  return import.commit().valuesAdded;
}

void importSr28(benchmark::State& state) {
  const fs::path file = workFolder() / "sr28.tarebowl";
  if (valuesCsv().empty()) return state.SkipWithError("SR28 is not here");
  for (auto step : state) {
    state.PauseTiming();
    removeCollection(file);
    Collection collection = Collection::create(file, kBench);
    state.ResumeTiming();
    state.counters["values"] = static_cast<double>(importAll(collection));
  }
  state.counters["MB"] = static_cast<double>(fs::file_size(file)) / 1e6;
}

void importWithTheShell(benchmark::State& state) {
  const fs::path file = workFolder() / "shell.db";
  if (valuesCsv().empty() || !runs("sqlite3 --version >/dev/null"))
    return state.SkipWithError("SR28 or the sqlite3 shell is not here");
  const std::string command =
      "sqlite3 -csv '" + file.string() +
      "' 'CREATE TABLE v (food INTEGER, nutrient INTEGER, value REAL, n INTEGER, se REAL, source INTEGER, "
      "derivation TEXT, PRIMARY KEY (food, nutrient))' \".import '" +
      valuesCsv().string() + "' v\"";
  for (auto step : state) {
    state.PauseTiming();
    fs::remove(file);
    state.ResumeTiming();
    if (!runs(command)) state.SkipWithError("the shell failed");
  }
  state.counters["MB"] = static_cast<double>(fs::file_size(file)) / 1e6;
}

std::vector<food::FoodLine> names() {
  std::ifstream csv(referenceFolder() / "sr28/food_des.csv");
  std::vector<food::FoodLine> foods;
  std::string line;
  std::getline(csv, line);
  while (std::getline(csv, line)) {
    const auto id = static_cast<std::int64_t>(foods.size());
    foods.push_back({id, line.substr(0, 5), line.substr(6, 80), "raw", "food"});
  }
  return foods;
}

/// One keystroke: the search for what has been typed so far.
void search(benchmark::State& state, const std::string& typed) {
  const food::FoodIndex index(names());
  if (index.size() == 0) return state.SkipWithError("SR28 is not here");
  for (auto step : state) benchmark::DoNotOptimize(index.find(typed, 100));
  state.counters["foods"] = static_cast<double>(index.size());
}

/// What a window needs for its first paint: the file open and its list of foods.
void openAndList(benchmark::State& state) {
  const fs::path file = workFolder() / "sr28.tarebowl";
  if (!fs::exists(file)) return state.SkipWithError("importSr28 was not run before");
  for (auto step : state) {
    const Collection collection = Collection::open(file, kBench.at);
    benchmark::DoNotOptimize(listFoods(collection));
  }
}

void openOnly(benchmark::State& state) {
  const fs::path file = workFolder() / "sr28.tarebowl";
  if (!fs::exists(file)) return state.SkipWithError("importSr28 was not run before");
  for (auto step : state) benchmark::DoNotOptimize(Collection::open(file, kBench.at).schemaVersion());
}

BENCHMARK(importWithTheShell)->Iterations(3)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(importSr28)->Iterations(3)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(openOnly)->Unit(benchmark::kMillisecond);
BENCHMARK(openAndList)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(search, k, std::string("k"))->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(search, kale, std::string("kale"))->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(search, three_words, std::string("raw chick bre"))->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
