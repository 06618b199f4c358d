// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_records.h"
#include "core/store/collection.h"

#include <optional>
#include <string>
#include <vector>

/// Reading species, animals, groups and what was measured of them. Every call throws StoreError; what a call
/// returns is a snapshot. Lists of things are in the order of their codes, readings in the order of days.
namespace tarebowl::store {

[[nodiscard]] std::vector<StoredSpecies> listSpecies(const Collection& collection);
[[nodiscard]] std::optional<StoredSpecies> findSpecies(const Collection& collection, const std::string& code);
[[nodiscard]] std::optional<StoredSpecies> findSpecies(const Collection& collection, SpeciesId id);

[[nodiscard]] std::vector<StoredIndividual> listIndividuals(const Collection& collection);
[[nodiscard]] std::optional<StoredIndividual> findIndividual(const Collection& collection,
                                                             const std::string& code);
[[nodiscard]] std::optional<StoredIndividual> findIndividual(const Collection& collection, IndividualId id);

[[nodiscard]] std::vector<StoredGroup> listGroups(const Collection& collection);
[[nodiscard]] std::optional<StoredGroup> findGroup(const Collection& collection, const std::string& code);
[[nodiscard]] std::optional<StoredGroup> findGroup(const Collection& collection, GroupId id);

/// Every stay, also those that have ended.
[[nodiscard]] std::vector<StoredMembership> listMemberships(const Collection& collection);
[[nodiscard]] std::vector<StoredMembership> membershipsOfGroup(const Collection& collection,
                                                               const std::string& group);
[[nodiscard]] std::vector<StoredMembership> membershipsOfIndividual(const Collection& collection,
                                                                    const std::string& individual);

[[nodiscard]] std::vector<StoredMass> massesOfIndividual(const Collection& collection,
                                                         const std::string& individual);
/// Means of the group itself, not those of its members.
[[nodiscard]] std::vector<StoredMass> massesOfGroup(const Collection& collection, const std::string& group);
[[nodiscard]] std::vector<StoredCondition> conditionsOfIndividual(const Collection& collection,
                                                                  const std::string& individual);
[[nodiscard]] std::vector<StoredCondition> conditionsOfGroup(const Collection& collection,
                                                             const std::string& group);

/// The readings alone, as animal::massOn and animal::doubtsAbout take them; index for index.
[[nodiscard]] std::vector<animal::MassReading> readingsOf(const std::vector<StoredMass>& masses);
[[nodiscard]] std::vector<animal::Membership> staysOf(const std::vector<StoredMembership>& memberships);

/// What a new animal of a species is expected to weigh: the median of every believed reading of its species;
/// nothing where there is none.
[[nodiscard]] std::optional<quantity::Kilograms> expectedMass(const Collection& collection,
                                                              const std::string& species);

}  // namespace tarebowl::store
