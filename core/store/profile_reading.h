// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_records.h"
#include "core/store/collection.h"

#include <optional>
#include <string>
#include <vector>

/// Reading target profiles, energy plans and the house's own cautions. Every call throws StoreError; what a
/// call returns is a snapshot.
namespace tarebowl::store {

/// Every version of every profile, by code and then by version.
[[nodiscard]] std::vector<StoredProfile> listProfiles(const Collection& collection);
[[nodiscard]] std::vector<StoredProfile> versionsOfProfile(const Collection& collection,
                                                           const std::string& code);
[[nodiscard]] std::optional<StoredProfile> findProfile(const Collection& collection,
                                                       const animal::ProfileReference& reference);
[[nodiscard]] std::optional<StoredProfile> findProfile(const Collection& collection, ProfileId id);
/// Versions that take over from this one.
[[nodiscard]] std::vector<StoredProfile> childrenOfProfile(const Collection& collection,
                                                           const animal::ProfileReference& reference);
/// The version that holds on a day: the highest that was in force by then; nothing where that one was retired
/// or there is none.
[[nodiscard]] std::optional<StoredProfile> profileInForce(const Collection& collection,
                                                          const std::string& code, quantity::Date day);
/// The same of all versions of a profile, in their order.
[[nodiscard]] std::optional<StoredProfile> inForceAmong(const std::vector<StoredProfile>& versions,
                                                        quantity::Date day);

enum class ProfileState { Draft, Planned, InForce, Superseded, Retired };
/// Planned: in force from a later day. versions: all of the same code.
[[nodiscard]] ProfileState stateOn(const ProfileRecord& record, const std::vector<StoredProfile>& versions,
                                   quantity::Date day);

/// For animal::resolve; it reads the collection at each call and must not outlive it.
[[nodiscard]] animal::ProfileLookup profileLookup(const Collection& collection);

/// By the day from which they hold.
[[nodiscard]] std::vector<StoredEnergyPlan> energyPlansOf(const Collection& collection,
                                                          const std::string& group);
[[nodiscard]] std::optional<StoredEnergyPlan> energyPlanOn(const Collection& collection,
                                                           const std::string& group, quantity::Date day);

[[nodiscard]] std::vector<StoredHouseCaution> listHouseCautions(const Collection& collection);

}  // namespace tarebowl::store
