// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"
#include "core/store/food_records.h"
#include "core/store/written.h"

#include <cstdint>
#include <string>

/// What writes foods to a collection, and undo. The verbs of animals stand in animal_verbs.h, mass_verbs.h
/// and profile_verbs.h; FoodImport (food_import.h) and restore (backup.h) write too. Each verb is one
/// transaction and leaves one entry in the change log; it is on disk when the verb returns. Each throws
/// StoreError, and then nothing was written: Refused for what the collection's rules do not allow, Conflict
/// (a ConflictError with both versions) where the thing was changed since it was read.
namespace tarebowl::store {

Written addFood(Collection& collection, const FoodRecord& record, const Author& author);
/// Puts the record in place of the one of this revision.
Written editFood(Collection& collection, FoodId food, int seenRevision, const FoodRecord& record,
                 const Author& author);
/// Refused while samples or cooked foods rest on it.
Written removeFood(Collection& collection, FoodId food, int seenRevision, const Author& author);

Written addSample(Collection& collection, FoodId food, const food::Sample& sample, const Author& author);
/// Values of components that this program does not know stay as they are.
Written editSample(Collection& collection, SampleId sample, int seenRevision, const food::Sample& changed,
                   const Author& author);
/// Leaves a sample out of the composition, for a reason that must be given.
Written excludeSample(Collection& collection, SampleId sample, int seenRevision, const std::string& reason,
                      const Author& author);
Written includeSample(Collection& collection, SampleId sample, int seenRevision, const Author& author);
Written removeSample(Collection& collection, SampleId sample, int seenRevision, const Author& author);

/// Takes a change back, whoever made it, as a change of its own (so that undoing that one redoes the first).
/// Conflict where the thing is no longer as the change left it. An import is taken back as a whole, as long
/// as nothing that came with it was touched; it is redone by importing the table again.
Written undo(Collection& collection, std::int64_t change, const Author& author);

}  // namespace tarebowl::store
