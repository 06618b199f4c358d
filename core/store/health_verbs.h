// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/observation.h"
#include "core/store/collection.h"
#include "core/store/mass_verbs.h"
#include "core/store/written.h"

#include <string>
#include <vector>

/// What writes and reads observations of health; as all verbs (verbs.h).
namespace tarebowl::store {

enum class ObservationId : std::int64_t {};
using StoredObservation = Stored<ObservationId, health::Observation>;

/// An observation that must be confirmed before it is written: a blood value that looks as if it were in
/// another unit or that no animal is likely to have, a day to come. Nothing was written.
class DoubtfulObservation : public StoreError {
 public:
  using StoreError::StoreError;
};

/// Why an observation is to be confirmed before it is written, in words; empty where it is not.
[[nodiscard]] std::string doubtAbout(const health::Observation& observation, quantity::Date today);

/// Refused for everything that health::problemWith finds, for a file that leads out of the collection's
/// folder, and for a day on which the animal was not there yet (born, arrived) or any more, or the group was
/// empty.
/// Today is the day of author.at.
Written addObservation(Collection& collection, const health::Observation& observation, Confirmed confirmed,
                       const Author& author);
/// Many that were believed elsewhere already, as one transaction: none is asked about, and where one is
/// refused none is written.
std::vector<Written> addObservations(Collection& collection,
                                     const std::vector<health::Observation>& observations,
                                     const Author& author);
Written editObservation(Collection& collection, ObservationId id, int seenRevision,
                        const health::Observation& observation, Confirmed confirmed, const Author& author);
Written removeObservation(Collection& collection, ObservationId id, int seenRevision, const Author& author);

/// In order of days and times; both days are in it.
[[nodiscard]] std::vector<StoredObservation> observationsOfGroup(const Collection& collection,
                                                                 const std::string& group,
                                                                 quantity::Date from, quantity::Date to);
[[nodiscard]] std::vector<StoredObservation> observationsOfIndividual(const Collection& collection,
                                                                      const std::string& individual,
                                                                      quantity::Date from, quantity::Date to);
[[nodiscard]] std::optional<StoredObservation> findObservation(const Collection& collection,
                                                               ObservationId id);

}  // namespace tarebowl::store
