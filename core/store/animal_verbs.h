// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_records.h"
#include "core/store/collection.h"
#include "core/store/written.h"

/// What writes species, animals and groups. As all verbs (verbs.h): one transaction, one entry in the change
/// log, on disk when it returns, taken back by undo; throws StoreError (Refused, Conflict) and then nothing
/// was written. A code may be renamed: what refers to it follows.
namespace tarebowl::store {

Written addSpecies(Collection& collection, const animal::Species& species, const Author& author);
Written editSpecies(Collection& collection, SpeciesId id, int seenRevision, const animal::Species& species,
                    const Author& author);
/// Refused while individuals or groups are of it.
Written removeSpecies(Collection& collection, SpeciesId id, int seenRevision, const Author& author);

/// Refused for everything that animal::problemsWith finds.
Written addIndividual(Collection& collection, const animal::Individual& individual, const Author& author);
Written editIndividual(Collection& collection, IndividualId id, int seenRevision,
                       const animal::Individual& individual, const Author& author);
/// Refused while it is or was in a group, or was weighed or scored.
Written removeIndividual(Collection& collection, IndividualId id, int seenRevision, const Author& author);

Written addGroup(Collection& collection, const animal::Group& group, const Author& author);
Written editGroup(Collection& collection, GroupId id, int seenRevision, const animal::Group& group,
                  const Author& author);
/// Refused while it has or had members, readings or an energy plan.
Written removeGroup(Collection& collection, GroupId id, int seenRevision, const Author& author);

/// Refused where the animal is in a group on one of the days, is of another species than the group, or was
/// not born or not there any more.
Written addMembership(Collection& collection, const animal::Membership& membership, const Author& author);
Written editMembership(Collection& collection, MembershipId id, int seenRevision,
                       const animal::Membership& membership, const Author& author);
Written removeMembership(Collection& collection, MembershipId id, int seenRevision, const Author& author);

}  // namespace tarebowl::store
