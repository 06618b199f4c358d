// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/animal_words.h"
#include "core/exchange/fixed_table.h"
#include "core/exchange/herd_file.h"

#include <array>

namespace tarebowl::exchange {

namespace {

constexpr std::array<std::string_view, 7> kMassTitles{"individual", "group", "date",    "mass_kg",
                                                      "method",     "note",  "excluded"};
constexpr std::array<std::string_view, 6> kConditionTitles{"individual", "group", "date",
                                                           "scale",      "score", "note"};

HerdMass massOf(const FixedRecord& record) {
  HerdMass mass{.individual = record.text(0), .group = record.text(1)};
  mass.reading.on = record.date(2);
  mass.reading.mass = quantity::Kilograms(record.number(3));
  const auto method = animal::parseWord<animal::MassMethod>(record.row[4]);
  if (!method) record.refuse(4, "scale, trained-on-scale, carried, under-anaesthesia or estimated");
  mass.reading.method = *method;
  mass.reading.note = record.text(5);
  if (!record.row[6].empty()) mass.reading.excluded = record.text(6);
  return mass;
}

HerdCondition conditionOf(const FixedRecord& record) {
  return {record.text(0),
          record.text(1),
          {.on = record.date(2), .scale = record.text(3), .score = record.number(4), .note = record.text(5)}};
}

}  // namespace

std::vector<HerdMass> readMasses(const std::filesystem::path& file) {
  return readFixedTable(file, kMassTitles, massOf);
}

std::vector<HerdCondition> readConditions(const std::filesystem::path& file) {
  return readFixedTable(file, kConditionTitles, conditionOf);
}

}  // namespace tarebowl::exchange
