// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/record_table.h"

/// How species, animals, groups and readings stand in their tables (migrations/0002_animals.sql). kSubject is
/// the word of the change log.
namespace tarebowl::store {

template <>
struct Table<std::string> {
  template <class Thing, class Visit>
  static void columns(Thing& word, Visit visit) {
    visit("word", word);
  }
};

template <>
struct Table<animal::Species> {
  static constexpr const char* kName = "species";
  static constexpr const char* kSubject = "species";
  template <class Thing, class Visit>
  static void columns(Thing& species, Visit visit) {
    visit("code", species.code);
    visit("name", species.name);
    visit("scientific_name", species.scientificName);
    visit("feeding_type", species.feedingType);
    visit("note", species.note);
    visit("invented", species.invented);
  }
  template <class Thing, class Visit>
  static void parts(Thing& species, Visit visit) {
    visit("species_taxon", species.taxa);
  }
};

template <>
struct Table<animal::StageEntry> {
  template <class Thing, class Visit>
  static void columns(Thing& entry, Visit visit) {
    visit("from_day", entry.from);
    visit("stage", entry.stage);
  }
};

template <>
struct Table<animal::Individual> {
  static constexpr const char* kName = "individual";
  static constexpr const char* kSubject = "individual";
  template <class Thing, class Visit>
  static void columns(Thing& individual, Visit visit) {
    visit("code", individual.code);
    visit("species", individual.species);
    visit("sex", individual.sex);
    visit("born", individual.born);
    visit("birth_estimated", individual.birthEstimated);
    visit("arrived", individual.arrived);
    visit("left_on", individual.left);
    visit("died", individual.died);
    visit("note", individual.note);
    visit("invented", individual.invented);
  }
  template <class Thing, class Visit>
  static void parts(Thing& individual, Visit visit) {
    visit("individual_stage", individual.stages);
  }
};

template <>
struct Table<animal::GroupCount> {
  template <class Thing, class Visit>
  static void columns(Thing& count, Visit visit) {
    visit("from_day", count.from);
    visit("animals", count.count);
  }
};

template <>
struct Table<animal::Group> {
  static constexpr const char* kName = "animal_group";
  static constexpr const char* kSubject = "group";
  template <class Thing, class Visit>
  static void columns(Thing& group, Visit visit) {
    visit("code", group.code);
    visit("name", group.name);
    visit("species", group.species);
    visit("section", group.section);
    visit("profile", group.profile);
    visit("note", group.note);
    visit("invented", group.invented);
  }
  template <class Thing, class Visit>
  static void parts(Thing& group, Visit visit) {
    visit("group_count", group.counts);
  }
};

template <>
struct Table<animal::Membership> {
  static constexpr const char* kName = "membership";
  static constexpr const char* kSubject = "membership";
  template <class Thing, class Visit>
  static void columns(Thing& stay, Visit visit) {
    visit("group_code", stay.group);
    visit("individual", stay.individual);
    visit("from_day", stay.from);
    visit("until_day", stay.until);
  }
};

template <>
struct Table<FormerEntry> {
  template <class Thing, class Visit>
  static void columns(Thing& former, Visit visit) {
    visit("on_day", former.on);
    visit("mass_kg", former.mass);
    visit("correction", former.correction);
  }
};

template <>
struct Table<MassRecord> {
  static constexpr const char* kName = "mass_reading";
  static constexpr const char* kSubject = "mass";
  template <class Thing, class Visit>
  static void columns(Thing& mass, Visit visit) {
    visit("individual", mass.individual);
    visit("group_code", mass.group);
    visit("on_day", mass.reading.on);
    visit("mass_kg", mass.reading.mass);
    visit("method", mass.reading.method);
    visit("note", mass.reading.note);
    visit("excluded", mass.reading.excluded);
  }
  template <class Thing, class Visit>
  static void parts(Thing& mass, Visit visit) {
    visit("mass_former", mass.former);
  }
};

template <>
struct Table<ConditionRecord> {
  static constexpr const char* kName = "condition_reading";
  static constexpr const char* kSubject = "condition";
  template <class Thing, class Visit>
  static void columns(Thing& condition, Visit visit) {
    visit("individual", condition.individual);
    visit("group_code", condition.group);
    visit("on_day", condition.reading.on);
    visit("scale", condition.reading.scale);
    visit("score", condition.reading.score);
    visit("note", condition.reading.note);
  }
};

}  // namespace tarebowl::store
