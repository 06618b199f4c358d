// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/diet_records.h"
#include "core/store/profile_tables.h"

/// How diets and their versions stand in their tables (migrations/0003_diets.sql).
namespace tarebowl::store {

template <>
struct Table<diet::NamedDiet> {
  static constexpr const char* kName = "diet";
  static constexpr const char* kSubject = "diet";
  template <class Thing, class Visit>
  static void columns(Thing& diet, Visit visit) {
    visit("code", diet.code);
    visit("name", diet.name);
    visit("group_code", diet.group);
    visit("note", diet.note);
    visit("invented", diet.invented);
  }
};

template <>
struct Table<diet::DietLine> {
  template <class Thing, class Visit>
  static void columns(Thing& line, Visit visit) {
    visit("food", line.food);
    visit("grams", line.amount);
    visit("least_g", line.min);
    visit("most_g", line.max);
    visit("locked", line.locked);
    visit("purpose", line.purpose);
    visit("meal", line.meal);
    visit("preparation", line.preparation);
  }
};

template <>
struct Table<diet::Allowance> {
  template <class Thing, class Visit>
  static void columns(Thing& allowance, Visit visit) {
    visit("food", allowance.food);
    visit("low_g", allowance.low);
    visit("high_g", allowance.high);
    visit("purpose", allowance.purpose);
    visit("note", allowance.note);
  }
};

template <>
struct Table<diet::ChangedBound> {
  template <class Thing, class Visit>
  static void columns(Thing& bound, Visit visit) {
    visit("rule", bound.rule);
    visit("least", bound.min);
    visit("most", bound.max);
    visit("reason", bound.reason);
  }
};

template <>
struct Table<diet::LiftedBan> {
  template <class Thing, class Visit>
  static void columns(Thing& lifted, Visit visit) {
    visit("ban", lifted.ban);
    visit("food", lifted.food);
    visit("reason", lifted.reason);
    visit("who", lifted.who);
    visit("on_day", lifted.on);
  }
};

template <>
struct Table<diet::VersionStep> {
  template <class Thing, class Visit>
  static void columns(Thing& step, Visit visit) {
    visit("state", step.to);
    visit("who", step.who);
    visit("at", step.at);
    visit("reason", step.reason);
  }
};

template <>
struct Table<DecidedDiet> {
  template <class Thing, class Visit>
  static void columns(Thing& decided, Visit visit) {
    visit("problem", decided.problem);
    visit("result", decided.result);
  }
};

template <>
struct Table<VersionRecord> {
  static constexpr const char* kName = "diet_version";
  static constexpr const char* kSubject = "diet version";
  template <class Thing, class Visit>
  static void columns(Thing& record, Visit visit) {
    auto& version = record.version;
    visit("diet", record.diet);
    visit("number", version.number);
    visit("state", version.state);
    visit("made_from", version.madeFrom);
    visit("profile", version.profile);
    visit("objective", version.objective.kind);
    visit("objective_nutrient", version.objective.nutrient);
    visit("confidence", version.confidence);
    visit("energy_method", version.energyMethod);
    visit("whole_steps", version.wholeSteps);
    visit("fed_from", version.fedFrom);
    visit("phase_in_days", version.phaseInDays);
    visit("note", version.note);
  }
  template <class Thing, class Visit>
  static void parts(Thing& record, Visit visit) {
    auto& version = record.version;
    visit("diet_line", version.lines);
    visit("diet_allowance", version.allowances);
    visit("diet_changed_bound", version.changedBounds);
    visit("diet_share", version.shares);
    visit("diet_choice", version.choices);
    visit("diet_lifted", version.lifted);
    visit("diet_step", version.steps);
    visit("diet_decided", record.decided);
  }
};

template <>
struct Table<BareVersion> {
  static constexpr const char* kName = Table<VersionRecord>::kName;
  template <class Thing, class Visit>
  static void columns(Thing& record, Visit visit) {
    Table<VersionRecord>::columns(record, visit);
  }
};

template <>
struct Table<FedVersion> {
  static constexpr const char* kName = Table<VersionRecord>::kName;
  template <class Thing, class Visit>
  static void columns(Thing& record, Visit visit) {
    Table<VersionRecord>::columns(record, visit);
  }
  template <class Thing, class Visit>
  static void parts(Thing& record, Visit visit) {
    visit("diet_line", record.version.lines);
    visit("diet_allowance", record.version.allowances);
  }
};

}  // namespace tarebowl::store
