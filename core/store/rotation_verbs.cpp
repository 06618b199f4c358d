// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/rotation_verbs.h"

#include "core/store/record_reading.h"
#include "core/store/record_verbs.h"
#include "core/store/rotation_tables.h"

namespace tarebowl::store {

namespace {

using diet::KeptRotation;

KeptRotation signedBy(KeptRotation rotation, const Author& author) {
  rotation.who = author.who;
  rotation.at = author.at;
  return rotation;
}

}  // namespace

Written addRotation(Collection& collection, const KeptRotation& rotation, const Author& author) {
  return addThing(collection, signedBy(rotation, author), author);
}

Written importRotation(Collection& collection, const KeptRotation& rotation, const Author& author) {
  return addThing(collection, rotation, author);
}

Written editRotation(Collection& collection, RotationId id, int seenRevision, const KeptRotation& rotation,
                     const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, signedBy(rotation, author), author);
}

Written removeRotation(Collection& collection, RotationId id, int seenRevision, const Author& author) {
  return removeThing<KeptRotation>(collection, static_cast<long long>(id), seenRevision, author);
}

std::vector<StoredRotation> rotationsOfDiet(const Collection& collection, const std::string& dietCode) {
  return readAll<StoredRotation>(collection, "WHERE diet = :diet ORDER BY from_day, version, id", dietCode);
}

std::optional<StoredRotation> findRotation(const Collection& collection, RotationId id) {
  return readById<StoredRotation>(collection, id);
}

std::optional<StoredRotation> rotationOn(const Collection& collection, const std::string& dietCode,
                                         int version, quantity::Date day) {
  return readOne<StoredRotation>(
      collection, "WHERE diet = :diet AND version = :version AND from_day <= :day AND until_day >= :same",
      dietCode, version, day, day);
}

std::set<std::pair<std::string, int>> versionsInRotationOn(const Collection& collection, quantity::Date day) {
  return guarded(collection.file(), [&] {
    std::string diet;
    int version = 0;
    RowQuery rows(collection.inner().connection,
                  "SELECT diet, version FROM rotation WHERE from_day <= :day AND until_day >= :same", day,
                  day);
    std::set<std::pair<std::string, int>> versions;
    while (rows.next(diet, version)) versions.emplace(diet, version);
    return versions;
  });
}

}  // namespace tarebowl::store
