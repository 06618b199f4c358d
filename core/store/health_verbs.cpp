// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/health_verbs.h"

#include "core/store/health_tables.h"
#include "core/store/record_reading.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

void askAbout(Collection::Inner& inner, const health::Observation& observation, Confirmed confirmed,
              const Author& author) {
  if (confirmed == Confirmed::Yes) return;
  const auto today = quantity::dayOfTime(author.at);
  if (!today) refuse(inner, "\"" + author.at + "\" does not begin with a day");
  if (const std::string doubt = doubtAbout(observation, *today); !doubt.empty())
    throw DoubtfulObservation(StoreErrorCode::Refused, inner.file(), doubt);
}

constexpr const char* kInOrder = "AND on_day >= :from AND on_day <= :to ORDER BY on_day, at_time, id";

}  // namespace

std::string doubtAbout(const health::Observation& observation, quantity::Date today) {
  if (observation.on > today) return fmt::format("{} is a day to come", quantity::isoDate(observation.on));
  for (const health::BloodValue& value : observation.blood) {
    const auto doubt = health::doubtAbout(value);
    if (!doubt) continue;
    const std::string said =
        fmt::format("{} of {} {}", animal::symbolOf(value.analyte), value.value, symbolOf(value.unit));
    if (doubt->likely)
      return fmt::format("{} would be ordinary in {}: is the unit right?", said, symbolOf(*doubt->likely));
    return said + " is far from what animals have: is the number right?";
  }
  return "";
}

Written addObservation(Collection& collection, const health::Observation& observation, Confirmed confirmed,
                       const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    refuseUnsound(inner, 0, observation);
    askAbout(inner, observation, confirmed, author);
    return addWithin(inner, observation, "add observation", author);
  });
}

std::vector<Written> addObservations(Collection& collection,
                                     const std::vector<health::Observation>& observations,
                                     const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    std::vector<Written> written;
    written.reserve(observations.size());
    for (const health::Observation& observation : observations)
      written.push_back(addWithin(inner, observation, "add observation", author));
    return written;
  });
}

Written editObservation(Collection& collection, ObservationId id, int seenRevision,
                        const health::Observation& observation, Confirmed confirmed, const Author& author) {
  return changeThing<health::Observation>(collection, static_cast<long long>(id), seenRevision,
                                          "edit observation", author, stateOf(observation),
                                          [&](Collection::Inner& inner, health::Observation& after) {
                                            after = observation;
                                            refuseUnsound(inner, static_cast<long long>(id), after);
                                            askAbout(inner, after, confirmed, author);
                                          });
}

Written removeObservation(Collection& collection, ObservationId id, int seenRevision, const Author& author) {
  return removeThing<health::Observation>(collection, static_cast<long long>(id), seenRevision, author);
}

std::vector<StoredObservation> observationsOfGroup(const Collection& collection, const std::string& group,
                                                   quantity::Date from, quantity::Date to) {
  return readAll<StoredObservation>(collection, std::string("WHERE group_code = :group ") + kInOrder, group,
                                    from, to);
}

std::vector<StoredObservation> observationsOfIndividual(const Collection& collection,
                                                        const std::string& individual, quantity::Date from,
                                                        quantity::Date to) {
  return readAll<StoredObservation>(collection, std::string("WHERE individual = :individual ") + kInOrder,
                                    individual, from, to);
}

std::optional<StoredObservation> findObservation(const Collection& collection, ObservationId id) {
  return readById<StoredObservation>(collection, id);
}

}  // namespace tarebowl::store
