// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/profile_lineage.h"

#include "core/store/profile_reading.h"
#include "core/store/profile_tables.h"
#include "core/store/record_reading.h"

#include <algorithm>
#include <memory>

namespace tarebowl::store {

namespace {

/// A parent stands as "code version".
constexpr const char* kLine =
    "WHERE code || ' ' || version IN (WITH RECURSIVE line (named) AS (SELECT code || ' ' || version FROM "
    "target_profile WHERE code = :code UNION SELECT target_profile.parent FROM target_profile JOIN line ON "
    "target_profile.code || ' ' || target_profile.version = line.named WHERE target_profile.parent IS NOT "
    "NULL) "
    "SELECT named FROM line)";

}  // namespace

animal::ProfileLookup lineageOf(const Collection& collection, const std::string& code) {
  const auto line =
      std::make_shared<const std::vector<StoredProfile>>(readAll<StoredProfile>(collection, kLine, code));
  return
      [&collection, line](const animal::ProfileReference& reference) -> std::optional<animal::TargetProfile> {
        const auto found = std::ranges::find_if(*line, [&](const StoredProfile& stored) {
          const animal::TargetProfile& profile = stored.record.profile;
          return profile.code == reference.code && profile.version == reference.version;
        });
        if (found != line->end()) return found->record.profile;
        const auto other = findProfile(collection, reference);
        return other ? std::optional(other->record.profile) : std::nullopt;
      };
}

}  // namespace tarebowl::store
