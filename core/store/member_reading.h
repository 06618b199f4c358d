// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/animal_reading.h"
#include "core/store/health_verbs.h"

#include <map>
#include <string>
#include <vector>

/// What was recorded of each of a group's animals, in one query for all of them, which needs no answer first
/// about who they are. Every call throws StoreError; what a call returns is a snapshot.
namespace tarebowl::store {

/// By the codes of the animals that are in a group or ever were, however long; one of which there is no such
/// record is not in it. What is recorded of the group as a whole is not in it either.
template <class Stored>
using OfMembers = std::map<std::string, std::vector<Stored>>;

/// Both days are in it.
[[nodiscard]] OfMembers<StoredMass> massesOfMembers(const Collection& collection, const std::string& group,
                                                    quantity::Date from, quantity::Date to);
[[nodiscard]] OfMembers<StoredCondition> conditionsOfMembers(const Collection& collection,
                                                             const std::string& group, quantity::Date from,
                                                             quantity::Date to);
[[nodiscard]] OfMembers<StoredObservation> observationsOfMembers(const Collection& collection,
                                                                 const std::string& group,
                                                                 quantity::Date from, quantity::Date to);

/// What there is of one of them.
template <class Stored>
[[nodiscard]] const std::vector<Stored>& ofMember(const OfMembers<Stored>& all, const std::string& code) {
  static const std::vector<Stored> none;
  const auto place = all.find(code);
  return place == all.end() ? none : place->second;
}

}  // namespace tarebowl::store
