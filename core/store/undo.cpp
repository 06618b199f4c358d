// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_tables.h"
#include "core/store/faeces_tables.h"
#include "core/store/feeding_tables.h"
#include "core/store/food_json.h"
#include "core/store/food_rules.h"
#include "core/store/health_tables.h"
#include "core/store/imported_range.h"
#include "core/store/lot_tables.h"
#include "core/store/profile_tables.h"
#include "core/store/record_verbs.h"
#include "core/store/rotation_tables.h"
#include "core/store/verbs.h"
#include "core/store/write.h"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

namespace {

/// What a subject of the log can do: tell its state, and take one.
struct FoodSubject {
  Collection::Inner& inner;
  long long id;

  [[nodiscard]] std::optional<std::string> state() const {
    const auto stored = loadFood(inner, id);
    return stored ? std::optional(toJson(stored->record)) : std::nullopt;
  }
  [[nodiscard]] int revision() const {
    const auto stored = loadFood(inner, id);
    return stored ? stored->revision : 0;
  }
  void insert(const std::string& state) const {
    const FoodRecord record = foodFromJson(state);
    refuseTakenCode(inner, record.food.code, id);
    insertFood(inner, id, 1, record);
  }
  void update(const std::string& state, int revision) const {
    const FoodRecord record = foodFromJson(state);
    refuseTakenCode(inner, record.food.code, id);
    updateFood(inner, id, revision, record);
    refuseCycle(inner, record.food.code);
  }
  void remove() const { deleteFood(inner, id); }
};

struct SampleSubject {
  Collection::Inner& inner;
  long long id;

  [[nodiscard]] std::optional<std::string> state() const {
    const auto stored = loadSample(inner, id);
    return stored ? std::optional(toJson(inner, *stored)) : std::nullopt;
  }
  [[nodiscard]] int revision() const {
    const auto stored = loadSample(inner, id);
    return stored ? stored->revision : 0;
  }
  [[nodiscard]] SampleRows rows(const std::string& state, int revision) const {
    SampleRows made = sampleFromJson(inner, state);
    made.id = id;
    made.revision = revision;
    refuseTakenSource(inner, made);
    return made;
  }
  void insert(const std::string& state) const { insertSample(inner, rows(state, 1)); }
  void update(const std::string& state, int revision) const { updateSample(inner, rows(state, revision)); }
  void remove() const { deleteSample(inner, id); }
};

/// Everything that is told once how it stands in a table.
template <class T>
struct ThingSubject {
  Collection::Inner& inner;
  long long id;

  [[nodiscard]] std::optional<std::string> state() const {
    const auto row = loadById<T>(inner, id);
    return row ? std::optional(stateOf(row->record)) : std::nullopt;
  }
  [[nodiscard]] int revision() const {
    const auto row = loadById<T>(inner, id);
    return row ? row->revision : 0;
  }
  void insert(const std::string& state) const {
    const T thing = fromState<T>(state);
    refuseUnsound(inner, id, thing);
    insertRow(inner, id, 1, thing);
  }
  void update(const std::string& state, int revision) const {
    const T before = loadById<T>(inner, id).value().record;
    refuseTakingBack(inner, before);
    const T thing = fromState<T>(state);
    refuseUnsound(inner, id, thing);
    updateRow(inner, id, revision, before, thing);
  }
  void remove() const {
    const T thing = loadById<T>(inner, id).value().record;
    refuseInUse(inner, thing);
    removeRow(inner, id, thing);
  }
};

std::string verbFor(const Change& change) {
  return fmt::format("undo {}: {}", change.number, change.verb);
}

template <class Subject>
Written takeBack(const Subject& subject, const Change& change, const Author& author) {
  if (subject.state() != change.after) {
    throw ConflictError(subject.inner.file(), "the " + change.subject, change.before.value_or(""),
                        subject.state().value_or(""));
  }
  const int revision = subject.revision() + 1;
  if (!change.before)
    subject.remove();
  else if (!change.after)
    subject.insert(*change.before);
  else
    subject.update(*change.before, revision);
  const int left = change.before ? subject.revision() : 0;
  return {subject.id, left,
          record(subject.inner,
                 {0, author, verbFor(change), change.subject, subject.id, change.after, change.before})};
}

/// Takes back a change of one of these things; nothing for any other subject.
template <class... Things>
std::optional<Written> takeBackOneOf(Collection::Inner& inner, const Change& change, const Author& author) {
  std::optional<Written> written;
  const auto attempt = [&]<class T>(const T*) {
    if (change.subject != Table<T>::kSubject) return;
    written = takeBack(ThingSubject<T>{inner, change.subjectId.value()}, change, author);
  };
  (attempt(static_cast<const Things*>(nullptr)), ...);
  return written;
}

long long countBetween(Collection::Inner& inner, const std::string& query, std::int64_t first,
                       std::int64_t last) {
  const long long from = first;
  const long long to = last;
  long long count = 0;
  inner.sql() << "SELECT COUNT(*) FROM " + query, soci::use(from, "first"), soci::use(to, "last"),
      soci::into(count);
  return count;
}

void removeBetween(Collection::Inner& inner, const std::string& query, std::int64_t first,
                   std::int64_t last) {
  const long long from = first;
  const long long to = last;
  inner.sql() << "DELETE FROM " + query, soci::use(from, "first"), soci::use(to, "last");
}

[[noreturn]] void refuseAsTouched(Collection::Inner& inner) {
  throw ConflictError(inner.file(), "what was imported", "", "{}");
}

/// Those of the range that were written again since the import, by their numbers.
std::vector<long long> editedBetween(Collection::Inner& inner, const std::string& table, std::int64_t first,
                                     std::int64_t last) {
  const long long from = first;
  const long long to = last;
  long long id = 0;
  soci::statement rows = (inner.sql().prepare << "SELECT id FROM " + table +
                                                     " WHERE id BETWEEN :first AND :last AND revision > 1",
                          soci::use(from, "first"), soci::use(to, "last"), soci::into(id));
  rows.execute();
  std::vector<long long> ids;
  while (rows.fetch()) ids.push_back(id);
  return ids;
}

/// An edit that was itself taken back leaves a thing as the import made it: as it was before the first edit.
template <class Subject>
void refuseEdited(Collection::Inner& inner, const Change& import, const std::string& subject,
                  std::int64_t first, std::int64_t last) {
  const long long number = import.number;
  for (const long long id : editedBetween(inner, subject, first, last)) {
    std::optional<std::string> imported;
    inner.sql() << "SELECT state_before FROM change_log WHERE id = (SELECT MIN(id) FROM change_log WHERE "
                   "id > :number AND subject = :subject AND subject_id = :id)",
        soci::use(number, "number"), soci::use(subject, "subject"), soci::use(id, "id"), soci::into(imported);
    if (Subject{inner, id}.state() != imported) refuseAsTouched(inner);
  }
}

void refuseTouched(Collection::Inner& inner, const Change& import, const ImportedRange& range) {
  const auto samples =
      countBetween(inner, "sample WHERE id BETWEEN :first AND :last", range.firstSample, range.lastSample);
  const auto foods =
      countBetween(inner, "food WHERE id BETWEEN :first AND :last", range.firstFood, range.lastFood);
  const auto ofOthers = countBetween(inner,
                                     fmt::format("sample WHERE food_id BETWEEN :first AND :last "
                                                 "AND NOT id BETWEEN {} AND {}",
                                                 range.firstSample, range.lastSample),
                                     range.firstFood, range.lastFood);
  const auto cooked = countBetween(inner, "food_cooking WHERE raw_food_id BETWEEN :first AND :last",
                                   range.firstFood, range.lastFood);
  const auto mixed = countBetween(inner, "food_recipe_part WHERE part_food_id BETWEEN :first AND :last",
                                  range.firstFood, range.lastFood);
  const auto fed =
      countBetween(inner, "fed_food WHERE food_id BETWEEN :first AND :last", range.firstFood, range.lastFood);
  if (samples != range.lastSample - range.firstSample + 1 || foods != range.lastFood - range.firstFood + 1 ||
      ofOthers + cooked + mixed + fed > 0)
    refuseAsTouched(inner);
  refuseEdited<SampleSubject>(inner, import, "sample", range.firstSample, range.lastSample);
  refuseEdited<FoodSubject>(inner, import, "food", range.firstFood, range.lastFood);
}

/// What the import changed in samples of earlier ones, the last first.
void takeBackEdits(const Collection& collection, const Change& import, const ImportedRange& range,
                   const Author& author) {
  if (!range.firstEdit) return;
  for (std::int64_t number = import.number - 1; number >= *range.firstEdit; --number) {
    const auto edit = findChange(collection, number);
    takeBack(SampleSubject{collection.inner(), edit.value().subjectId.value()}, *edit, author);
  }
}

Written takeBackImport(const Collection& collection, const Change& change, const Author& author) {
  Collection::Inner& inner = collection.inner();
  if (!change.after) refuse(inner, "an import that was taken back is redone by importing the table again");
  const ImportedRange range = importedRange(*change.after);
  refuseTouched(inner, change, range);
  takeBackEdits(collection, change, range, author);
  removeBetween(inner, "sample_value WHERE sample_id BETWEEN :first AND :last", range.firstSample,
                range.lastSample);
  removeBetween(inner, "sample WHERE id BETWEEN :first AND :last", range.firstSample, range.lastSample);
  removeBetween(inner, "food_caution WHERE food_id BETWEEN :first AND :last", range.firstFood,
                range.lastFood);
  removeBetween(inner, "food WHERE id BETWEEN :first AND :last", range.firstFood, range.lastFood);
  return {0, 0, record(inner, {0, author, verbFor(change), change.subject, {}, change.after, {}})};
}

}  // namespace

Written undo(Collection& collection, std::int64_t number, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    const auto change = findChange(collection, number);
    if (!change) refuse(inner, fmt::format("there is no change {}", number));
    if (change->subject == "table") return takeBackImport(collection, *change, author);
    if (change->subject == "food")
      return takeBack(FoodSubject{inner, change->subjectId.value()}, *change, author);
    if (change->subject == "sample")
      return takeBack(SampleSubject{inner, change->subjectId.value()}, *change, author);
    const auto written =
        takeBackOneOf<animal::Species, animal::Individual, animal::Group, animal::Membership, MassRecord,
                      ConditionRecord, ProfileRecord, EnergyPlanRecord, animal::FoodCaution, diet::NamedDiet,
                      VersionRecord, diet::KeptRotation, intake::ControlPan, intake::ToleranceRule,
                      health::Observation, intake::FoodLot, intake::FaecesCollected>(inner, *change, author);
    if (written) return *written;
    refuse(inner, "this change cannot be taken back");
  });
}

}  // namespace tarebowl::store
