// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/animal_verbs.h"

#include "core/store/animal_tables.h"
#include "core/store/record_verbs.h"

namespace tarebowl::store {

Written addSpecies(Collection& collection, const animal::Species& species, const Author& author) {
  return addThing(collection, species, author);
}

Written editSpecies(Collection& collection, SpeciesId id, int seenRevision, const animal::Species& species,
                    const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, species, author);
}

Written removeSpecies(Collection& collection, SpeciesId id, int seenRevision, const Author& author) {
  return removeThing<animal::Species>(collection, static_cast<long long>(id), seenRevision, author);
}

Written addIndividual(Collection& collection, const animal::Individual& individual, const Author& author) {
  return addThing(collection, individual, author);
}

Written editIndividual(Collection& collection, IndividualId id, int seenRevision,
                       const animal::Individual& individual, const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, individual, author);
}

Written removeIndividual(Collection& collection, IndividualId id, int seenRevision, const Author& author) {
  return removeThing<animal::Individual>(collection, static_cast<long long>(id), seenRevision, author);
}

Written addGroup(Collection& collection, const animal::Group& group, const Author& author) {
  return addThing(collection, group, author);
}

Written editGroup(Collection& collection, GroupId id, int seenRevision, const animal::Group& group,
                  const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, group, author);
}

Written removeGroup(Collection& collection, GroupId id, int seenRevision, const Author& author) {
  return removeThing<animal::Group>(collection, static_cast<long long>(id), seenRevision, author);
}

Written addMembership(Collection& collection, const animal::Membership& membership, const Author& author) {
  return addThing(collection, membership, author);
}

Written editMembership(Collection& collection, MembershipId id, int seenRevision,
                       const animal::Membership& membership, const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, membership, author);
}

Written removeMembership(Collection& collection, MembershipId id, int seenRevision, const Author& author) {
  return removeThing<animal::Membership>(collection, static_cast<long long>(id), seenRevision, author);
}

}  // namespace tarebowl::store
