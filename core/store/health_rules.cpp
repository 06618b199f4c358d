// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/animal/group.h"
#include "core/store/animal_tables.h"
#include "core/store/health_tables.h"
#include "core/store/record_rules.h"
#include "core/store/rule_queries.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

using quantity::isoDate;

std::string_view wordsFor(health::ObservationProblem problem) {
  switch (problem) {
    case health::ObservationProblem::NotOneSubject:
      return "an observation is of one animal or of one group";
    case health::ObservationProblem::BadTime:
      return "a time is HH:MM, 00:00 to 23:59";
    case health::ObservationProblem::NothingSaid:
      return "it says nothing: faeces need a score, appetite a word, blood a value, a treatment a note";
    case health::ObservationProblem::OfAnotherKind:
      return "a score, an appetite or a blood value stands with an observation of its own kind";
  }
  return "it is not sound";
}

std::string_view wordsFor(health::ScoreProblem problem) {
  switch (problem) {
    case health::ScoreProblem::NoScale:
      return "a faecal score needs its scale: 2 is hard on one and nearly liquid on another";
    case health::ScoreProblem::ScaleUpsideDown:
      return "the highest score of a scale is above its lowest";
    case health::ScoreProblem::OffTheScale:
      return "the score is not on its scale";
    case health::ScoreProblem::IdealOffTheScale:
      return "the ideal is not on the scale";
  }
  return "the score is not sound";
}

std::string_view wordsFor(health::BloodProblem problem) {
  switch (problem) {
    case health::BloodProblem::NotAnAmount:
      return "a blood value is 0 or more";
    case health::BloodProblem::UnitOfAnotherKind:
      return "is not measured in this unit";
    case health::BloodProblem::RangeUpsideDown:
      return "the lab's range begins above its end";
  }
  return "is not sound";
}

void refuseOutsideLife(Collection::Inner& inner, const animal::Individual& animal, quantity::Date on) {
  if (animal.arrived && on < *animal.arrived)
    refuse(inner, fmt::format("{} arrived on {}: it was not here on {}", animal.code,
                              isoDate(*animal.arrived), isoDate(on)));
  if (animal.born && on < *animal.born)
    refuse(inner, fmt::format("{} was not born before {}", animal.code, isoDate(*animal.born)));
  if (animal.left && !animal.died && on >= *animal.left)
    refuse(inner, fmt::format("{} left on {}", animal.code, isoDate(*animal.left)));
}

/// A group that has members or counts has somebody in it on the day.
void refuseEmptyGroup(Collection::Inner& inner, const animal::Group& group, quantity::Date on) {
  std::vector<animal::Membership> stays;
  for (Row<animal::Membership>& row :
       loadRows<animal::Membership>(inner, "WHERE group_code = :group", group.code))
    stays.push_back(std::move(row.record));
  if (stays.empty() && group.counts.empty()) return;
  if (animal::headcountOn(group, stays, on).value_or(0) == 0)
    refuse(inner, fmt::format("nobody was in the group {} on {}", group.code, isoDate(on)));
}

void refuseAbsentSubject(Collection::Inner& inner, const health::Observation& observation) {
  if (observation.group) {
    const auto group = loadRow<animal::Group>(inner, "WHERE code = :code", *observation.group);
    if (!group) refuse(inner, "there is no group " + *observation.group);
    return refuseEmptyGroup(inner, group->record, observation.on);
  }
  const auto animal = loadRow<animal::Individual>(inner, "WHERE code = :code", *observation.individual);
  if (!animal) refuse(inner, "there is no animal " + *observation.individual);
  refuseOutsideLife(inner, animal->record, observation.on);
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long /*id*/, const health::Observation& observation) {
  if (const auto problem = health::problemWith(observation)) refuse(inner, std::string(wordsFor(*problem)));
  if (observation.faeces)
    if (const auto problem = health::problemWith(*observation.faeces))
      refuse(inner, std::string(wordsFor(*problem)));
  for (const health::BloodValue& value : observation.blood)
    if (const auto problem = health::problemWith(value))
      refuse(inner, fmt::format("{} {} {}: {}", animal::symbolOf(value.analyte), value.value,
                                health::symbolOf(value.unit), wordsFor(*problem)));
  for (const health::Attachment& attachment : observation.attachments)
    if (!health::staysInside(attachment.path))
      refuse(inner,
             fmt::format("\"{}\" does not lie in the collection's folder: give a path from there, with "
                         "/ between folders",
                         attachment.path));
  refuseAbsentSubject(inner, observation);
}

std::string nameOf(const health::Observation& observation) {
  return fmt::format("the observation of {} on {}",
                     observation.individual.value_or(observation.group.value_or("")),
                     isoDate(observation.on));
}

}  // namespace tarebowl::store
