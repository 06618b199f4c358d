// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/section_reading.h"

#include "core/store/animal_tables.h"
#include "core/store/mass_series.h"
#include "core/store/reading.h"
#include "core/store/record_reading.h"

#include <utility>

namespace tarebowl::store {

namespace {

using Section = std::optional<std::string>;

std::string groupsOf(const Section& section) {
  return fmt::format("SELECT code FROM animal_group{}", section ? " WHERE section = :section" : "");
}

/// Each once, however often it moved.
std::string membersOf(const Section& section) {
  return fmt::format("SELECT DISTINCT individual AS code FROM membership WHERE group_code IN ({})",
                     groupsOf(section));
}

template <class Answer>
std::vector<Answer> readIn(const Collection& collection, const Section& section,
                           const std::string& condition) {
  return section ? readAll<Answer>(collection, condition, *section) : readAll<Answer>(collection, condition);
}

std::map<std::string, std::vector<animal::Membership>> staysByGroup(const Collection& collection,
                                                                    const Section& section) {
  std::map<std::string, std::vector<animal::Membership>> stays;
  for (StoredMembership& stay : readIn<StoredMembership>(
           collection, section,
           fmt::format("WHERE group_code IN ({}) ORDER BY from_day, id", groupsOf(section))))
    stays[stay.record.group].push_back(std::move(stay.record));
  return stays;
}

std::map<std::string, animal::Species> speciesByCode(const Collection& collection, const Section& section) {
  std::map<std::string, animal::Species> species;
  const std::string condition =
      section ? "WHERE code IN (SELECT species FROM animal_group WHERE section = :section)" : "";
  for (StoredSpecies& one : readIn<StoredSpecies>(collection, section, condition))
    species.emplace(one.record.code, std::move(one.record));
  return species;
}

std::optional<animal::GroupMass> massOf(const HousedGroup& group, const MassSeries& ofMembers,
                                        const MassSeries& ofGroups, quantity::Date day) {
  std::vector<std::optional<animal::CurrentMass>> members;
  for (const std::string& member : group.members) members.push_back(massIn(ofMembers, member, day));
  return animal::groupMass(members, massIn(ofGroups, group.group.record.code, day));
}

}  // namespace

std::vector<HousedGroup> groupsHousedOn(const Collection& collection, quantity::Date day,
                                        const Section& section) {
  const std::string which = section ? "WHERE section = :section ORDER BY code" : "ORDER BY code";
  askAhead(
      collection, [&] { return speciesByCode(collection, section); },
      [&] { return staysByGroup(collection, section); },
      [&] { return readIn<StoredGroup>(collection, section, which); });
  const auto species = speciesByCode(collection, section);
  const auto stays = staysByGroup(collection, section);
  std::vector<HousedGroup> groups;
  for (StoredGroup& group : readIn<StoredGroup>(collection, section, which)) {
    HousedGroup& housed = groups.emplace_back(HousedGroup{.group = std::move(group)});
    const animal::Group& record = housed.group.record;
    if (const auto place = species.find(record.species); place != species.end())
      housed.species = place->second;
    const auto own = stays.find(record.code);
    const std::vector<animal::Membership> none;
    const auto& those = own == stays.end() ? none : own->second;
    housed.members = animal::membersOn(those, record.code, day);
    housed.headcount = animal::headcountOn(record, those, day);
  }
  return groups;
}

std::map<std::string, quantity::Kilograms> bodyMassesOn(const Collection& collection,
                                                        std::span<const HousedGroup> groups,
                                                        quantity::Date day, const Section& section) {
  const auto readMembers = [&] {
    return readingsThatCount(collection, day, {"individual", membersOf(section), section});
  };
  const auto readWhole = [&] {
    return readingsThatCount(collection, day, {"group_code", groupsOf(section), section});
  };
  askAhead(collection, readMembers, readWhole);
  const MassSeries members = readMembers();
  const MassSeries whole = readWhole();
  std::map<std::string, quantity::Kilograms> masses;
  for (const HousedGroup& group : groups) {
    if (const auto mass = massOf(group, members, whole, day))
      masses.emplace(group.group.record.code, mass->mass);
  }
  return masses;
}

}  // namespace tarebowl::store
