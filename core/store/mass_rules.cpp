// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/animal_tables.h"
#include "core/store/record_rules.h"
#include "core/store/rule_queries.h"

#include <fmt/format.h>

#include <cmath>

namespace tarebowl::store {

namespace {

using quantity::isoDate;

/// A reading is of an animal or of a group that is there, and of a day of the animal's life.
template <class Record>
void refuseWithoutSubject(Collection::Inner& inner, const Record& record) {
  if (record.individual.has_value() == record.group.has_value())
    refuse(inner, "a reading is of one animal or of one group");
  if (record.group) {
    if (!codeIsThere(inner, "animal_group", *record.group))
      refuse(inner, "there is no group " + *record.group);
    return;
  }
  const auto individual = loadRow<animal::Individual>(inner, "WHERE code = :code", *record.individual);
  if (!individual) refuse(inner, "there is no animal " + *record.individual);
  const animal::Individual& animal = individual->record;
  if (animal.born && record.reading.on < *animal.born)
    refuse(inner, fmt::format("{} was not born before {}", animal.code, isoDate(*animal.born)));
  if (animal.left && !animal.died && record.reading.on >= *animal.left)
    refuse(inner, fmt::format("{} left on {}", animal.code, isoDate(*animal.left)));
}

std::string_view wordsFor(animal::ConditionProblem problem) {
  switch (problem) {
    case animal::ConditionProblem::UnknownScale:
      return "is not known here";
    case animal::ConditionProblem::OffTheScale:
      return "does not reach so far";
    case animal::ConditionProblem::BetweenSteps:
      return "has no such step";
  }
  return "does not fit";
}

template <class Record>
std::string subjectOf(const Record& record) {
  return record.individual.value_or(record.group.value_or(""));
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long /*id*/, const MassRecord& mass) {
  if (!std::isfinite(mass.reading.mass.value()) || mass.reading.mass <= quantity::Kilograms(0))
    refuse(inner, "a mass must be above 0 kg");
  if (mass.reading.excluded && mass.reading.excluded->empty())
    refuse(inner, "leaving a reading out needs a reason");
  for (const FormerEntry& former : mass.former)
    if (former.correction.empty()) refuse(inner, "putting a reading right needs a reason");
  refuseWithoutSubject(inner, mass);
}

void refuseUnsound(Collection::Inner& inner, long long /*id*/, const ConditionRecord& condition) {
  if (const auto problem = animal::problemWith(condition.reading))
    refuse(inner, fmt::format("a score of {}: the scale {} {}", condition.reading.score,
                              condition.reading.scale, wordsFor(*problem)));
  refuseWithoutSubject(inner, condition);
}

std::string nameOf(const MassRecord& mass) {
  return fmt::format("the mass of {} on {}", subjectOf(mass), isoDate(mass.reading.on));
}

std::string nameOf(const ConditionRecord& condition) {
  return fmt::format("the condition of {} on {}", subjectOf(condition), isoDate(condition.reading.on));
}

}  // namespace tarebowl::store
