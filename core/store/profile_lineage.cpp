// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/profile_lineage.h"

#include "core/store/profile_tables.h"
#include "core/store/record_reading.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace tarebowl::store {

namespace {

/// A parent stands as "code version".
constexpr const char* kLine =
    "WHERE code || ' ' || version IN (WITH RECURSIVE line (named) AS (SELECT code || ' ' || version FROM "
    "target_profile WHERE code = :code UNION SELECT target_profile.parent FROM target_profile JOIN line ON "
    "target_profile.code || ' ' || target_profile.version = line.named WHERE target_profile.parent IS NOT "
    "NULL) "
    "SELECT named FROM line) ORDER BY code, version";

std::optional<StoredProfile> findIn(const std::vector<StoredProfile>& line,
                                    const animal::ProfileReference& reference) {
  const auto found = std::ranges::find_if(line, [&](const StoredProfile& stored) {
    const animal::TargetProfile& profile = stored.record.profile;
    return profile.code == reference.code && profile.version == reference.version;
  });
  return found == line.end() ? std::nullopt : std::optional(*found);
}

}  // namespace

ProfileLineage::ProfileLineage(const Collection& collection, std::string code)
    : collection_(collection),
      code_(std::move(code)),
      line_(std::make_shared<const std::vector<StoredProfile>>(
          readAll<StoredProfile>(collection, kLine, code_))) {}

std::vector<StoredProfile> ProfileLineage::versions() const {
  std::vector<StoredProfile> own;
  std::ranges::copy_if(*line_, std::back_inserter(own),
                       [&](const StoredProfile& stored) { return stored.record.profile.code == code_; });
  return own;
}

std::optional<StoredProfile> ProfileLineage::inForce(quantity::Date day) const {
  return inForceAmong(versions(), day);
}

std::optional<StoredProfile> ProfileLineage::find(const animal::ProfileReference& reference) const {
  return findIn(*line_, reference);
}

animal::ProfileLookup ProfileLineage::lookup() const {
  return [&collection = collection_,
          line = line_](const animal::ProfileReference& reference) -> std::optional<animal::TargetProfile> {
    auto found = findIn(*line, reference);
    if (!found) found = findProfile(collection, reference);
    return found ? std::optional(found->record.profile) : std::nullopt;
  };
}

}  // namespace tarebowl::store
