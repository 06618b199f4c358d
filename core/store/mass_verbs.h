// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_records.h"
#include "core/store/collection.h"
#include "core/store/written.h"

#include <string>
#include <vector>

/// What writes weighings and condition scores; as all verbs (verbs.h).
namespace tarebowl::store {

/// Whether the person has been asked about a doubtful reading and stands by it.
enum class Confirmed { No, Yes };

/// A reading that must be confirmed before it is written: it may be right, and may be grams typed as
/// kilograms. Nothing was written.
class DoubtfulMass : public StoreError {
 public:
  DoubtfulMass(std::filesystem::path file, std::string detail, animal::MassDoubt doubt);
  [[nodiscard]] animal::MassDoubt doubt() const { return doubt_; }

 private:
  animal::MassDoubt doubt_;
};

/// Today is the day of author.at. Throws DoubtfulMass where animal::doubtAbout doubts it and it is not
/// confirmed; what is known of the species is expected where the series is too short to say.
Written addMass(Collection& collection, const MassRecord& mass, Confirmed confirmed, const Author& author);
/// Many that were believed elsewhere already, as one transaction with an entry in the log for each: a table
/// that is read in. None is asked about, and where one is refused none is written.
std::vector<Written> addMasses(Collection& collection, const std::vector<MassRecord>& masses,
                               const Author& author);
/// Puts a reading right, for a reason that must be given. What was written down first stays beside it for
/// good.
Written correctMass(Collection& collection, MassId id, int seenRevision, const animal::MassReading& reading,
                    const std::string& reason, Confirmed confirmed, const Author& author);
/// Leaves a reading out of what counts, for a reason that must be given; it stays in the record.
Written excludeMass(Collection& collection, MassId id, int seenRevision, const std::string& reason,
                    const Author& author);
Written includeMass(Collection& collection, MassId id, int seenRevision, const Author& author);

/// Refused for everything that animal::problemWith finds.
Written addCondition(Collection& collection, const ConditionRecord& condition, const Author& author);
Written editCondition(Collection& collection, ConditionId id, int seenRevision,
                      const ConditionRecord& condition, const Author& author);
Written removeCondition(Collection& collection, ConditionId id, int seenRevision, const Author& author);

}  // namespace tarebowl::store
