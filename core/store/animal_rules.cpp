// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/animal_tables.h"
#include "core/store/record_rules.h"
#include "core/store/rule_queries.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

using quantity::isoDate;

std::string_view wordsFor(animal::IndividualProblem problem) {
  switch (problem) {
    case animal::IndividualProblem::NoCode:
      return "an animal needs a house name or number";
    case animal::IndividualProblem::NoSpecies:
      return "it needs a species";
    case animal::IndividualProblem::BornAfterLeaving:
      return "it cannot be born after it left or died";
    case animal::IndividualProblem::ArrivedAfterLeaving:
      return "it cannot arrive after it left";
    case animal::IndividualProblem::BornAfterArriving:
      return "it cannot be born after it arrived";
    case animal::IndividualProblem::StagesNotInOrder:
      return "its life stages must follow each other by day";
    case animal::IndividualProblem::StageBeforeBirth:
      return "a life stage cannot begin before its birth";
    case animal::IndividualProblem::DiedWithoutDay:
      return "its death needs a day";
  }
  return "it is not sound";
}

void refuseUnknownSpecies(Collection::Inner& inner, const std::string& code) {
  if (!codeIsThere(inner, "species", code)) refuse(inner, "there is no species " + code);
}

/// Days outside an animal's life: before its birth or arrival, or when it had left.
void refuseOutsideLife(Collection::Inner& inner, const animal::Individual& individual, quantity::Date first,
                       std::optional<quantity::Date> last, std::string_view what) {
  if (individual.born && first < *individual.born)
    refuse(inner, fmt::format("{} of {} begins on {}, before its birth on {}", what, individual.code,
                              isoDate(first), isoDate(*individual.born)));
  if (individual.left && (last ? *last > *individual.left : first >= *individual.left))
    refuse(inner, fmt::format("{} of {} goes beyond {}, when it {}", what, individual.code,
                              isoDate(*individual.left), individual.died ? "died" : "left"));
}

void refuseOtherStay(Collection::Inner& inner, long long id, const animal::Membership& stay) {
  const std::string end = stay.until ? isoDate(*stay.until) : "9999-12-31";
  const auto other =
      loadRow<animal::Membership>(inner,
                                  "WHERE individual = :individual AND id <> :id AND from_day < :until "
                                  "AND (until_day IS NULL OR until_day > :from) ORDER BY from_day",
                                  stay.individual, id, end, stay.from);
  if (!other) return;
  const animal::Membership& theirs = other->record;
  refuse(inner, fmt::format("{} is in the group {} from {} {}: an animal eats from one bowl at a time",
                            stay.individual, theirs.group, isoDate(theirs.from),
                            theirs.until ? "until " + isoDate(*theirs.until) : "on"));
}

}  // namespace

void refuseUnsound(Collection::Inner& inner, long long id, const animal::Species& species) {
  if (species.code.empty()) refuse(inner, "a species needs a code");
  if (species.name.empty()) refuse(inner, "a species needs a name");
  refuseTakenCode(inner, "species", "species", species.code, id);
}

void refuseUnsound(Collection::Inner& inner, long long id, const animal::Individual& individual) {
  if (const auto problems = animal::problemsWith(individual); !problems.empty())
    refuse(inner, fmt::format("{}{}{}", individual.code, individual.code.empty() ? "" : ": ",
                              wordsFor(problems.front())));
  refuseUnknownSpecies(inner, individual.species);
  refuseTakenCode(inner, "individual", "animal", individual.code, id);
}

void refuseUnsound(Collection::Inner& inner, long long id, const animal::Group& group) {
  if (group.code.empty()) refuse(inner, "a group needs a code");
  if (group.name.empty()) refuse(inner, "a group needs a name");
  refuseUnknownSpecies(inner, group.species);
  refuseTakenCode(inner, "animal_group", "group", group.code, id);
  for (std::size_t i = 0; i < group.counts.size(); ++i) {
    if (group.counts[i].count < 0) refuse(inner, "a group counts 0 animals or more");
    if (i > 0 && !(group.counts[i - 1].from < group.counts[i].from))
      refuse(inner, "the counts of a group must follow each other by day");
  }
  if (!group.profile.empty() && !codeIsThere(inner, "target_profile", group.profile))
    refuse(inner, "there is no target profile " + group.profile);
}

void refuseUnsound(Collection::Inner& inner, long long id, const animal::Membership& stay) {
  const auto individual = loadRow<animal::Individual>(inner, "WHERE code = :code", stay.individual);
  if (!individual) refuse(inner, "there is no animal " + stay.individual);
  const auto group = loadRow<animal::Group>(inner, "WHERE code = :code", stay.group);
  if (!group) refuse(inner, "there is no group " + stay.group);
  if (individual->record.species != group->record.species)
    refuse(inner, fmt::format("{} is a {}, and the group {} is of {}", stay.individual,
                              individual->record.species, stay.group, group->record.species));
  if (stay.until && *stay.until <= stay.from) refuse(inner, "a stay must end after the day it begins");
  refuseOutsideLife(inner, individual->record, stay.from, stay.until, "the stay");
  refuseOtherStay(inner, id, stay);
}

void refuseInUse(Collection::Inner& inner, const animal::Species& species) {
  refuseRow(inner, "individual WHERE species = :code", species.code,
            "there are animals of the species " + species.code);
  refuseRow(inner, "animal_group WHERE species = :code", species.code,
            "there is a group of the species " + species.code);
}

void refuseInUse(Collection::Inner& inner, const animal::Individual& individual) {
  refuseRow(inner, "membership WHERE individual = :code", individual.code,
            individual.code + " is or was in a group; remove its stays first");
  refuseRow(inner, "mass_reading WHERE individual = :code", individual.code,
            individual.code + " was weighed: what was measured is kept");
  refuseRow(inner, "condition_reading WHERE individual = :code", individual.code,
            individual.code + " was scored: what was measured is kept");
  refuseRow(inner, "observation WHERE individual = :code", individual.code,
            "something was seen of " + individual.code + ": what was observed is kept");
}

void refuseInUse(Collection::Inner& inner, const animal::Group& group) {
  refuseRow(inner, "membership WHERE group_code = :code", group.code,
            group.code + " has or had members; remove their stays first");
  refuseRow(inner, "mass_reading WHERE group_code = :code", group.code,
            group.code + " was weighed: what was measured is kept");
  refuseRow(inner, "condition_reading WHERE group_code = :code", group.code,
            group.code + " was scored: what was measured is kept");
  refuseRow(inner, "observation WHERE group_code = :code", group.code,
            "something was seen of " + group.code + ": what was observed is kept");
  refuseRow(inner, "faeces_collected WHERE group_code = :code", group.code,
            "faeces of " + group.code + " were analysed: what was measured is kept");
  refuseRow(inner, "energy_plan WHERE group_code = :code", group.code,
            group.code + " has an energy plan; remove it first");
  refuseRow(inner, "diet WHERE group_code = :code", group.code, group.code + " has a diet: diets are kept");
  refuseRow(inner, "feeding_bowl WHERE group_id = (SELECT id FROM animal_group WHERE code = :code)",
            group.code, group.code + " was fed: what was weighed is kept");
}

std::string nameOf(const animal::Species& species) {
  return "the species " + species.code;
}

std::string nameOf(const animal::Individual& individual) {
  return "the animal " + individual.code;
}

std::string nameOf(const animal::Group& group) {
  return "the group " + group.code;
}

std::string nameOf(const animal::Membership& stay) {
  return fmt::format("the stay of {} in {}", stay.individual, stay.group);
}

}  // namespace tarebowl::store
