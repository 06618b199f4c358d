// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/animal_reading.h"

#include "core/food/robust.h"
#include "core/store/animal_tables.h"
#include "core/store/record_reading.h"

namespace tarebowl::store {

namespace {

constexpr const char* kByCode = "ORDER BY code";
constexpr const char* kOfIndividual = "WHERE individual = :code ORDER BY on_day, id";
constexpr const char* kOfGroup = "WHERE group_code = :code ORDER BY on_day, id";

}  // namespace

std::vector<StoredSpecies> listSpecies(const Collection& collection) {
  return readAll<StoredSpecies>(collection, kByCode);
}

std::optional<StoredSpecies> findSpecies(const Collection& collection, const std::string& code) {
  return readByCode<StoredSpecies>(collection, code);
}

std::optional<StoredSpecies> findSpecies(const Collection& collection, SpeciesId id) {
  return readById<StoredSpecies>(collection, id);
}

std::vector<StoredIndividual> listIndividuals(const Collection& collection) {
  return readAll<StoredIndividual>(collection, kByCode);
}

std::optional<StoredIndividual> findIndividual(const Collection& collection, const std::string& code) {
  return readByCode<StoredIndividual>(collection, code);
}

std::optional<StoredIndividual> findIndividual(const Collection& collection, IndividualId id) {
  return readById<StoredIndividual>(collection, id);
}

std::vector<StoredGroup> listGroups(const Collection& collection) {
  return readAll<StoredGroup>(collection, kByCode);
}

std::optional<StoredGroup> findGroup(const Collection& collection, const std::string& code) {
  return readByCode<StoredGroup>(collection, code);
}

std::optional<StoredGroup> findGroup(const Collection& collection, GroupId id) {
  return readById<StoredGroup>(collection, id);
}

std::vector<StoredMembership> listMemberships(const Collection& collection) {
  return readAll<StoredMembership>(collection, "ORDER BY from_day, id");
}

std::vector<StoredMembership> membershipsOfGroup(const Collection& collection, const std::string& group) {
  return readAll<StoredMembership>(collection, "WHERE group_code = :code ORDER BY from_day, id", group);
}

std::vector<StoredMembership> membershipsOfIndividual(const Collection& collection,
                                                      const std::string& individual) {
  return readAll<StoredMembership>(collection, "WHERE individual = :code ORDER BY from_day, id", individual);
}

std::vector<StoredMass> massesOfIndividual(const Collection& collection, const std::string& individual) {
  return readAll<StoredMass>(collection, kOfIndividual, individual);
}

std::vector<StoredMass> massesOfGroup(const Collection& collection, const std::string& group) {
  return readAll<StoredMass>(collection, kOfGroup, group);
}

std::vector<StoredCondition> conditionsOfIndividual(const Collection& collection,
                                                    const std::string& individual) {
  return readAll<StoredCondition>(collection, kOfIndividual, individual);
}

std::vector<StoredCondition> conditionsOfGroup(const Collection& collection, const std::string& group) {
  return readAll<StoredCondition>(collection, kOfGroup, group);
}

std::vector<animal::MassReading> readingsOf(const std::vector<StoredMass>& masses) {
  std::vector<animal::MassReading> readings;
  readings.reserve(masses.size());
  for (const StoredMass& mass : masses) readings.push_back(mass.record.reading);
  return readings;
}

std::vector<animal::Membership> staysOf(const std::vector<StoredMembership>& memberships) {
  std::vector<animal::Membership> stays;
  stays.reserve(memberships.size());
  for (const StoredMembership& membership : memberships) stays.push_back(membership.record);
  return stays;
}

std::optional<quantity::Kilograms> expectedMass(const Collection& collection, const std::string& species) {
  return guarded(collection.file(), [&]() -> std::optional<quantity::Kilograms> {
    RowQuery rows(collection.inner().connection,
                  "SELECT mass_kg FROM mass_reading WHERE excluded IS NULL AND "
                  "(individual IN (SELECT code FROM individual WHERE species = :species) OR "
                  "group_code IN (SELECT code FROM animal_group WHERE species = :species))",
                  species, species);
    std::vector<double> masses;
    for (double mass = 0; rows.next(mass);) masses.push_back(mass);
    if (masses.empty()) return std::nullopt;
    return quantity::Kilograms(food::medianOf(masses));
  });
}

}  // namespace tarebowl::store
