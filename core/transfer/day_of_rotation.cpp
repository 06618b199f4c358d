// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/day_of_rotation.h"

#include "core/diet/rotation_lines.h"
#include "core/store/rotation_verbs.h"

namespace tarebowl::transfer {

namespace {

std::optional<std::vector<diet::PlannedCell>> cellsOn(const store::Collection& collection,
                                                      const std::string& dietCode, int version,
                                                      quantity::Date day) {
  auto rotation = store::rotationOn(collection, dietCode, version, day);
  if (!rotation) return std::nullopt;
  const int number = diet::dayOfPeriod(rotation->record.from, day);
  std::vector<diet::PlannedCell> cells = std::move(rotation->record.cells);
  std::erase_if(cells, [number](const diet::PlannedCell& cell) { return cell.day != number; });
  return cells;
}

}  // namespace

std::optional<std::vector<diet::DietLine>> linesOfDay(const store::Collection& collection,
                                                      const std::string& dietCode,
                                                      const diet::DietVersion& version, quantity::Date day) {
  const auto cells = cellsOn(collection, dietCode, version.number, day);
  if (!cells) return std::nullopt;
  std::vector<diet::PlaceInVersion> places;
  diet::Diet grams;
  for (const diet::PlannedCell& cell : *cells) {
    places.push_back({.food = cell.food, .purpose = cell.purpose, .meal = cell.meal});
    grams.push_back(cell.amount);
  }
  return diet::linesOfPlannedDay(version, places, grams);
}

diet::Diet amountsOn(const store::Collection& collection, const DeskDiet& diet, quantity::Date day) {
  const diet::ProblemOfVersion& made = diet.made;
  const auto cells = cellsOn(collection, diet.diet.record.code, diet.version.record.version.number, day);
  if (!cells) return made.amounts;
  diet::Diet amounts = made.amounts;
  for (std::size_t food = 0; food < amounts.size(); ++food)
    if (!made.places[food].allowance) amounts[food] = quantity::Grams(0);
  for (const diet::PlannedCell& cell : *cells)
    if (const auto food = diet::placeOf(made.places, cell)) amounts[*food] = cell.amount;
  return amounts;
}

}  // namespace tarebowl::transfer
