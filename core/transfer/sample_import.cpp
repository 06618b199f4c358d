// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/sample_import.h"

#include "core/exchange/cooking_yields.h"
#include "core/exchange/lab_reports.h"
#include "core/exchange/larder_json.h"
#include "core/exchange/problem_foods.h"
#include "core/exchange/problem_json.h"
#include "core/store/food_reading.h"
#include "core/store/together.h"
#include "core/store/verbs.h"
#include "core/transfer/diet_import.h"
#include "core/transfer/feeding_import.h"
#include "core/transfer/herd_import.h"
#include "core/transfer/json_files.h"
#include "core/transfer/rotation_import.h"

#include <vector>

namespace tarebowl::transfer {

namespace {

std::vector<diet::BalanceProblem> problemsOf(const std::filesystem::path& folder) {
  std::vector<diet::BalanceProblem> problems;
  for (const auto& file : jsonFilesIn(folder)) problems.push_back(exchange::readProblem(file));
  return problems;
}

/// What the kitchen cooks and no bowl holds raw.
diet::BalanceProblem rawFoods(const std::filesystem::path& file) {
  diet::BalanceProblem foods;
  foods.foods = exchange::readLarder(file).foods;
  return foods;
}

void addFoods(store::Collection& collection, const std::filesystem::path& folder,
              const store::Author& author) {
  std::vector<diet::BalanceProblem> problems = problemsOf(folder);
  problems.push_back(rawFoods(folder / "kitchen" / "raw.json"));
  const std::vector<exchange::LabReport> reports = exchange::readLabReports(folder / "laboratory.csv");
  for (const exchange::ProblemFood& food : exchange::foodsOf(problems)) {
    const store::FoodId id{store::addFood(collection, {.food = food.food}, author).id};
    for (const food::Sample& sample : food.samples) store::addSample(collection, id, sample, author);
    for (const exchange::LabReport& report : reports)
      if (report.food == food.food.code) store::addSample(collection, id, report.sample, author);
  }
}

void addYields(store::Collection& collection, const std::filesystem::path& file,
               const store::Author& author) {
  for (const exchange::CookedFood& cooked : exchange::readCookingYields(file)) {
    store::StoredFood food = store::findFood(collection, cooked.food).value();
    food.record.cooking = cooked.cooking;
    store::editFood(collection, food.id, food.revision, food.record, author);
  }
}

}  // namespace

void importSample(store::Collection& collection, const std::filesystem::path& folder,
                  const store::Author& author, FeedingDays days) {
  store::together(collection, [&] {
    addFoods(collection, folder, author);
    addYields(collection, folder / "kitchen" / "yields.csv", author);
    importHerd(collection, folder / "herd", author);
    importDiets(collection, folder / "diets", author);
    importRotations(collection, folder / "rotations", author);
    if (days == FeedingDays::TakenIn) importFeeding(collection, folder / "feeding", author);
  });
}

}  // namespace tarebowl::transfer
