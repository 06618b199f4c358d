// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/kept_rotation.h"
#include "core/store/collection.h"
#include "core/store/diet_records.h"
#include "core/store/written.h"

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

/// What writes and reads rotations; as all verbs (verbs.h).
namespace tarebowl::store {

enum class RotationId : std::int64_t {};
using StoredRotation = Stored<RotationId, diet::KeptRotation>;

/// Signed by the author: who and at of the rotation are not read. Refused for everything that
/// diet::problemWith finds, where the diet has no such version, and where another rotation of the version has
/// a day of it.
Written addRotation(Collection& collection, const diet::KeptRotation& rotation, const Author& author);
/// One that was made elsewhere: it keeps who made it and when.
Written importRotation(Collection& collection, const diet::KeptRotation& rotation, const Author& author);
/// Planned again, or with other cells locked.
Written editRotation(Collection& collection, RotationId id, int seenRevision,
                     const diet::KeptRotation& rotation, const Author& author);
Written removeRotation(Collection& collection, RotationId id, int seenRevision, const Author& author);

/// Of one diet, the one that begins first before the others.
[[nodiscard]] std::vector<StoredRotation> rotationsOfDiet(const Collection& collection,
                                                          const std::string& dietCode);
[[nodiscard]] std::optional<StoredRotation> findRotation(const Collection& collection, RotationId id);
/// That of a version which has the day.
[[nodiscard]] std::optional<StoredRotation> rotationOn(const Collection& collection,
                                                       const std::string& dietCode, int version,
                                                       quantity::Date day);

/// The versions that have a rotation with the day: a diet's code and the version's number.
[[nodiscard]] std::set<std::pair<std::string, int>> versionsInRotationOn(const Collection& collection,
                                                                         quantity::Date day);

}  // namespace tarebowl::store
