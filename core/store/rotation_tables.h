// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/kept_rotation.h"
#include "core/store/record_table.h"

/// How rotations stand in their tables (migrations/0006_rotation.sql).
namespace tarebowl::store {

template <>
struct Table<diet::PlannedCell> {
  template <class Thing, class Visit>
  static void columns(Thing& cell, Visit visit) {
    visit("day", cell.day);
    visit("food", cell.food);
    visit("purpose", cell.purpose);
    visit("meal", cell.meal);
    visit("grams", cell.amount);
    visit("locked", cell.locked);
  }
};

template <>
struct Table<diet::KeptRotation> {
  static constexpr const char* kName = "rotation";
  static constexpr const char* kSubject = "rotation";
  template <class Thing, class Visit>
  static void columns(Thing& rotation, Visit visit) {
    visit("diet", rotation.diet);
    visit("version", rotation.version);
    visit("from_day", rotation.from);
    visit("until_day", rotation.until);
    visit("planned_from", rotation.plannedFrom);
    visit("rules", rotation.rules);
    visit("seed", rotation.seed);
    visit("as_eaten", rotation.asEaten);
    visit("shortfall", rotation.period.value);
    visit("shortfall_bound", rotation.period.bound);
    visit("days_shortfall", rotation.daily.value);
    visit("days_shortfall_bound", rotation.daily.bound);
    visit("wishes_missed", rotation.wishes.value);
    visit("wishes_missed_bound", rotation.wishes.bound);
    visit("aim", rotation.objective.value);
    visit("aim_bound", rotation.objective.bound);
    visit("who", rotation.who);
    visit("made_at", rotation.at);
    visit("note", rotation.note);
  }
  template <class Thing, class Visit>
  static void parts(Thing& rotation, Visit visit) {
    visit("rotation_cell", rotation.cells);
  }
};

}  // namespace tarebowl::store
