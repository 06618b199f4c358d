// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/section_reading.h"

#include "core/store/animal_tables.h"
#include "core/store/record_reading.h"

#include <utility>

namespace tarebowl::store {

namespace {

using Section = std::optional<std::string>;
using Series = std::map<std::string, std::vector<animal::MassReading>>;

/// place: of the section in the query; each is named once.
std::string groupsOf(const Section& section, const char* place = "section") {
  return fmt::format("SELECT code FROM animal_group{}",
                     section ? fmt::format(" WHERE section = :{}", place) : "");
}

std::string membersOf(const Section& section, const char* place) {
  return fmt::format("SELECT individual FROM membership WHERE group_code IN ({})", groupsOf(section, place));
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
/// ago. who: the column that says of whom a reading is; those, same: the query of those who matter, twice.
Series readingsThatCount(const Collection& collection, quantity::Date day, const Section& section,
                         const char* who, const std::string& those, const std::string& same) {
  const quantity::Date since{std::chrono::sys_days(day) - std::chrono::days(animal::kDaysOfMass)};
  const std::string condition = fmt::format(
      "WHERE {0} IN ({1}) AND excluded IS NULL AND on_day <= :day AND (on_day > :since OR ({0}, on_day) IN ("
      "SELECT {0}, MAX(on_day) FROM mass_reading WHERE {0} IN ({2}) AND excluded IS NULL AND on_day <= "
      ":until GROUP BY {0})) ORDER BY on_day, id",
      who, those, same);
  const auto found = section ? readAll<StoredMass>(collection, condition, *section, day, since, *section, day)
                             : readAll<StoredMass>(collection, condition, day, since, day);
  Series series;
  for (const StoredMass& mass : found)
    series[mass.record.individual ? *mass.record.individual : mass.record.group.value_or("")].push_back(
        mass.record.reading);
  return series;
}

std::optional<quantity::Kilograms> massIn(const Series& series, const std::string& code, quantity::Date day) {
  const auto place = series.find(code);
  if (place == series.end()) return std::nullopt;
  const auto current = animal::massOn(place->second, day);
  return current ? std::optional(current->mass) : std::nullopt;
}

std::optional<quantity::Kilograms> meanOf(const std::vector<std::string>& members, const Series& series,
                                          quantity::Date day) {
  quantity::Kilograms sum;
  std::size_t weighed = 0;
  for (const std::string& member : members)
    if (const auto mass = massIn(series, member, day)) {
      sum += *mass;
      ++weighed;
    }
  return weighed > 0 ? std::optional(sum / static_cast<double>(weighed)) : std::nullopt;
}

}  // namespace

std::vector<HousedGroup> groupsHousedOn(const Collection& collection, quantity::Date day,
                                        const Section& section) {
  const auto species = speciesByCode(collection, section);
  const auto stays = staysByGroup(collection, section);
  std::vector<HousedGroup> groups;
  for (StoredGroup& group : readIn<StoredGroup>(
           collection, section, section ? "WHERE section = :section ORDER BY code" : "ORDER BY code")) {
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
  const Series members = readingsThatCount(collection, day, section, "individual",
                                           membersOf(section, "section"), membersOf(section, "again"));
  const Series whole = readingsThatCount(collection, day, section, "group_code", groupsOf(section, "section"),
                                         groupsOf(section, "again"));
  std::map<std::string, quantity::Kilograms> masses;
  for (const HousedGroup& group : groups) {
    const std::string& code = group.group.record.code;
    auto mass = meanOf(group.members, members, day);
    if (!mass) mass = massIn(whole, code, day);
    if (mass) masses.emplace(code, *mass);
  }
  return masses;
}

}  // namespace tarebowl::store
