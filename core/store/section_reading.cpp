// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/section_reading.h"

#include "core/store/animal_tables.h"
#include "core/store/reading.h"
#include "core/store/record_reading.h"

#include <utility>

namespace tarebowl::store {

namespace {

using Section = std::optional<std::string>;
using Series = std::map<std::string, std::vector<animal::MassReading>>;

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

/// What animal::massOn looks at of each series: the last days', and the newest day's where that is longer
/// ago. who: the column that says of whom a reading is; those: the query of those who matter, as `code`.
Series readingsThatCount(const Collection& collection, quantity::Date day, const Section& section,
                         const char* who, const std::string& those) {
  const quantity::Date since{std::chrono::sys_days(day) - std::chrono::days(animal::kDaysOfMass)};
  // The newest day of each by itself and once (DISTINCT keeps PostgreSQL from asking it for every reading),
  // so that no more than these readings are looked at of ten years.
  const std::string condition = fmt::format(
      "WHERE id IN (SELECT counted.id FROM (SELECT DISTINCT code, (SELECT MAX(on_day) FROM mass_reading AS "
      "earlier WHERE earlier.{0} = code AND earlier.excluded IS NULL AND earlier.on_day <= :day) AS newest "
      "FROM ({1}) AS asked) AS series JOIN mass_reading AS counted ON counted.{0} = series.code WHERE "
      "counted.excluded IS NULL AND counted.on_day <= :until AND counted.on_day >= CASE WHEN series.newest > "
      ":since THEN :first ELSE series.newest END) ORDER BY on_day, id",
      who, those);
  const quantity::Date first{std::chrono::sys_days(since) + std::chrono::days(1)};
  const auto found = section ? readAll<StoredMass>(collection, condition, day, *section, day, since, first)
                             : readAll<StoredMass>(collection, condition, day, day, since, first);
  Series series;
  for (const StoredMass& mass : found)
    series[mass.record.individual ? *mass.record.individual : mass.record.group.value_or("")].push_back(
        mass.record.reading);
  return series;
}

std::optional<animal::CurrentMass> massIn(const Series& series, const std::string& code, quantity::Date day) {
  const auto place = series.find(code);
  return place == series.end() ? std::nullopt : animal::massOn(place->second, day);
}

std::optional<animal::GroupMass> massOf(const HousedGroup& group, const Series& ofMembers,
                                        const Series& ofGroups, quantity::Date day) {
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
    return readingsThatCount(collection, day, section, "individual", membersOf(section));
  };
  const auto readWhole = [&] {
    return readingsThatCount(collection, day, section, "group_code", groupsOf(section));
  };
  askAhead(collection, readMembers, readWhole);
  const Series members = readMembers();
  const Series whole = readWhole();
  std::map<std::string, quantity::Kilograms> masses;
  for (const HousedGroup& group : groups) {
    if (const auto mass = massOf(group, members, whole, day))
      masses.emplace(group.group.record.code, mass->mass);
  }
  return masses;
}

}  // namespace tarebowl::store
