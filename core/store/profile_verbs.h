// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_records.h"
#include "core/store/collection.h"
#include "core/store/written.h"

#include <string>

/// What writes target profiles, energy plans and the house's own cautions; as all verbs (verbs.h).
///
/// A version of a profile is a draft until it is put in force. One in force never changes: a new version is
/// drafted from it. What its parent states never changes either, for a version is put in force only after its
/// ancestors; so what was in force on a day can be worked out for good.
namespace tarebowl::store {

/// Version 1 of a new code, as a draft; profile.version is not read.
Written addProfile(Collection& collection, const animal::TargetProfile& profile, const Author& author);
/// The next version of a profile, a copy of this one, as a draft. Refused while another draft of it is there,
/// and for starters, which are derived from.
Written draftNextVersion(Collection& collection, ProfileId from, const Author& author);
/// The same with another content, as where a profile comes from a file; profile.version is not read.
Written draftNextVersion(Collection& collection, ProfileId from, const animal::TargetProfile& profile,
                         const Author& author);
/// Only drafts; code and version stay. Refused for circular parents, with the chain.
Written editProfile(Collection& collection, ProfileId id, int seenRevision,
                    const animal::TargetProfile& profile, const Author& author);
/// Only drafts that nothing takes over from.
Written removeProfile(Collection& collection, ProfileId id, int seenRevision, const Author& author);
/// From this day on it holds in place of the version before it. A reason must be given.
Written putInForce(Collection& collection, ProfileId id, int seenRevision, quantity::Date from,
                   const std::string& reason, const Author& author);
/// From this day on the code has no version in force. What took over from it stays as it is.
Written retireProfile(Collection& collection, ProfileId id, int seenRevision, quantity::Date from,
                      const std::string& reason, const Author& author);

/// Keeps a published profile that came with the program in the collection, in force from the day of
/// author.at, so that what is derived from it stays reproducible when the program's own list changes. Where
/// the same is there already nothing is written (change is 0); where the program's differs it becomes the
/// next version. profile.starter must be true.
Written adoptStarter(Collection& collection, const animal::TargetProfile& profile, const Author& author);

Written addEnergyPlan(Collection& collection, const EnergyPlanRecord& plan, const Author& author);
Written editEnergyPlan(Collection& collection, EnergyPlanId id, int seenRevision,
                       const EnergyPlanRecord& plan, const Author& author);
Written removeEnergyPlan(Collection& collection, EnergyPlanId id, int seenRevision, const Author& author);

Written addHouseCaution(Collection& collection, const animal::FoodCaution& caution, const Author& author);
Written editHouseCaution(Collection& collection, HouseCautionId id, int seenRevision,
                         const animal::FoodCaution& caution, const Author& author);
Written removeHouseCaution(Collection& collection, HouseCautionId id, int seenRevision, const Author& author);

}  // namespace tarebowl::store
