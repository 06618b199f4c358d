// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/diet_records.h"
#include "core/store/written.h"

#include <string>

/// What writes diets and their versions; as all verbs (verbs.h).
///
/// A version is edited while it is a draft. Submitted, it waits for a decision and stays as it is; approved,
/// it never changes: what is to be fed otherwise is a new version. More than one draft of a diet may be
/// there.
namespace tarebowl::store {

/// Refused where the group is not in the collection or the code is taken.
Written addDiet(Collection& collection, const diet::NamedDiet& diet, const Author& author);
Written editDiet(Collection& collection, DietId id, int seenRevision, const diet::NamedDiet& diet,
                 const Author& author);
/// Refused while it has versions.
Written removeDiet(Collection& collection, DietId id, int seenRevision, const Author& author);

/// A draft with the next number of its diet; number, state, steps and day of the version are not read.
Written addVersion(Collection& collection, const std::string& dietCode, const diet::DietVersion& version,
                   const Author& author);
/// A version with the life that it had elsewhere: number, state, steps, and what was decided on, as they are
/// told. Refused where the diet has this number.
Written importVersion(Collection& collection, const VersionRecord& version, const Author& author);
/// Only drafts; number, state and steps stay.
Written editVersion(Collection& collection, VersionId id, int seenRevision, const diet::DietVersion& version,
                    const Author& author);
/// Only drafts.
Written removeVersion(Collection& collection, VersionId id, int seenRevision, const Author& author);

/// A draft that can be judged (diet::problemsWith is empty). A reason is not needed.
Written submitVersion(Collection& collection, VersionId id, int seenRevision, const std::string& reason,
                      const Author& author);
/// Submitted → draft. A reason must be given.
Written sendBackVersion(Collection& collection, VersionId id, int seenRevision, const std::string& reason,
                        const Author& author);
/// When a version is fed, and from what it is phased in.
struct FeedingStart {
  quantity::Date from{};
  int phaseInDays = 0;  ///< 0: at once
};
/// Submitted → approved. A reason must be given, and what was decided on.
Written approveVersion(Collection& collection, VersionId id, int seenRevision, const DecidedDiet& decided,
                       const FeedingStart& start, const std::string& reason, const Author& author);
/// Approved → retired. A reason must be given.
Written retireVersion(Collection& collection, VersionId id, int seenRevision, const std::string& reason,
                      const Author& author);

}  // namespace tarebowl::store
