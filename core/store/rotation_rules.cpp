// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/diet_tables.h"
#include "core/store/record_rules.h"
#include "core/store/rotation_tables.h"
#include "core/store/rule_queries.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

using diet::KeptRotation;
using diet::KeptRotationProblem;
using quantity::isoDate;

std::string_view wordsFor(KeptRotationProblem problem) {
  switch (problem) {
    case KeptRotationProblem::EndsBeforeItBegins:
      return "its last day is before its first";
    case KeptRotationProblem::PlannedOutsidePeriod:
      return "the day that it is planned from is none of its days";
    case KeptRotationProblem::NoRules:
      return "it has no rules: they say how it is planned again";
    case KeptRotationProblem::NotDated:
      return "it does not say when it was made";
    case KeptRotationProblem::CellOutsidePeriod:
      return "a food stands on a day that is none of its days";
    case KeptRotationProblem::CellWithoutFood:
      return "a cell names no food";
    case KeptRotationProblem::NoAmount:
      return "grams must be a number, 0 or more";
    case KeptRotationProblem::CellTwice:
      return "a food stands twice on one day, in one meal";
    case KeptRotationProblem::NoValue:
      return "what it reaches must be numbers";
  }
  return "it is not sound";
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long id, const KeptRotation& rotation) {
  if (const auto problem = diet::problemWith(rotation))
    refuse(inner, fmt::format("{}: {}", nameOf(rotation), wordsFor(*problem)));
  if (!loadRow<VersionRecord>(inner, "WHERE diet = :diet AND number = :number", rotation.diet,
                              rotation.version))
    refuse(inner, fmt::format("there is no version {} of {}", rotation.version, rotation.diet));
  const auto other = loadRow<KeptRotation>(
      inner,
      "WHERE diet = :diet AND version = :version AND from_day <= :until AND until_day >= :from AND id <> :id",
      rotation.diet, rotation.version, rotation.until, rotation.from, id);
  if (other)
    refuse(inner, fmt::format("{} has a rotation from {} to {}: plan that one again, or begin after it",
                              rotation.diet, isoDate(other->record.from), isoDate(other->record.until)));
}

std::string nameOf(const KeptRotation& rotation) {
  return fmt::format("the rotation of {} from {}", rotation.diet, isoDate(rotation.from));
}

}  // namespace tarebowl::store
