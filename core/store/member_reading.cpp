// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/member_reading.h"

#include "core/store/animal_tables.h"
#include "core/store/health_tables.h"
#include "core/store/record_reading.h"

#include <fmt/format.h>

#include <utility>

namespace tarebowl::store {

namespace {

/// order: the columns that say it, as SQL has them.
template <class Stored>
OfMembers<Stored> readByMember(const Collection& collection, const std::string& group, quantity::Date from,
                               quantity::Date to, const char* order = "on_day, id") {
  const std::string condition = fmt::format(
      "WHERE individual IN (SELECT individual FROM membership WHERE group_code = :code) AND on_day >= :from "
      "AND on_day <= :to ORDER BY {}",
      order);
  OfMembers<Stored> all;
  for (Stored& one : readAll<Stored>(collection, condition, group, from, to))
    if (one.record.individual) all[*one.record.individual].push_back(std::move(one));
  return all;
}

}  // namespace

OfMembers<StoredMass> massesOfMembers(const Collection& collection, const std::string& group,
                                      quantity::Date from, quantity::Date to) {
  return readByMember<StoredMass>(collection, group, from, to);
}

OfMembers<StoredCondition> conditionsOfMembers(const Collection& collection, const std::string& group,
                                               quantity::Date from, quantity::Date to) {
  return readByMember<StoredCondition>(collection, group, from, to);
}

OfMembers<StoredObservation> observationsOfMembers(const Collection& collection, const std::string& group,
                                                   quantity::Date from, quantity::Date to) {
  return readByMember<StoredObservation>(collection, group, from, to, "on_day, at_time, id");
}

}  // namespace tarebowl::store
