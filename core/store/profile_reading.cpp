// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/profile_reading.h"

#include "core/store/profile_tables.h"
#include "core/store/record_reading.h"

#include <algorithm>

namespace tarebowl::store {

namespace {

/// From which day a version has been in force; nothing for a draft.
std::optional<quantity::Date> forceOf(const ProfileRecord& record, ProfileStepKind kind) {
  const auto step = std::ranges::find(record.steps, kind, &ProfileStep::kind);
  return step == record.steps.end() ? std::nullopt : std::optional(step->from);
}

bool hasBegun(const ProfileRecord& record, ProfileStepKind kind, quantity::Date day) {
  const auto from = forceOf(record, kind);
  return from && *from <= day;
}

/// The highest version that was in force by a day, retired or not; versions in their order.
const StoredProfile* newestBy(const std::vector<StoredProfile>& versions, quantity::Date day) {
  const StoredProfile* newest = nullptr;
  for (const StoredProfile& version : versions)
    if (hasBegun(version.record, ProfileStepKind::PutInForce, day)) newest = &version;
  return newest;
}

}  // namespace

std::vector<StoredProfile> listProfiles(const Collection& collection) {
  return readAll<StoredProfile>(collection, "ORDER BY code, version");
}

std::vector<StoredProfile> versionsOfProfile(const Collection& collection, const std::string& code) {
  return readAll<StoredProfile>(collection, "WHERE code = :code ORDER BY version", code);
}

std::optional<StoredProfile> findProfile(const Collection& collection,
                                         const animal::ProfileReference& reference) {
  return readOne<StoredProfile>(collection, "WHERE code = :code AND version = :version", reference.code,
                                reference.version);
}

std::optional<StoredProfile> findProfile(const Collection& collection, ProfileId id) {
  return readById<StoredProfile>(collection, id);
}

std::vector<StoredProfile> childrenOfProfile(const Collection& collection,
                                             const animal::ProfileReference& reference) {
  return readAll<StoredProfile>(collection, "WHERE parent = :parent ORDER BY code, version", reference);
}

std::optional<StoredProfile> profileInForce(const Collection& collection, const std::string& code,
                                            quantity::Date day) {
  return inForceAmong(versionsOfProfile(collection, code), day);
}

std::optional<StoredProfile> inForceAmong(const std::vector<StoredProfile>& versions, quantity::Date day) {
  const StoredProfile* newest = newestBy(versions, day);
  if (newest == nullptr || hasBegun(newest->record, ProfileStepKind::Retired, day)) return std::nullopt;
  return *newest;
}

ProfileState stateOn(const ProfileRecord& record, const std::vector<StoredProfile>& versions,
                     quantity::Date day) {
  if (!forceOf(record, ProfileStepKind::PutInForce)) return ProfileState::Draft;
  if (!hasBegun(record, ProfileStepKind::PutInForce, day)) return ProfileState::Planned;
  if (hasBegun(record, ProfileStepKind::Retired, day)) return ProfileState::Retired;
  const StoredProfile* newest = newestBy(versions, day);
  const bool isNewest = newest != nullptr && newest->record.profile.version == record.profile.version;
  return isNewest ? ProfileState::InForce : ProfileState::Superseded;
}

animal::ProfileLookup profileLookup(const Collection& collection) {
  return [&collection](const animal::ProfileReference& reference) -> std::optional<animal::TargetProfile> {
    const auto found = findProfile(collection, reference);
    return found ? std::optional(found->record.profile) : std::nullopt;
  };
}

std::vector<StoredEnergyPlan> energyPlansOf(const Collection& collection, const std::string& group) {
  return readAll<StoredEnergyPlan>(collection, "WHERE group_code = :code ORDER BY from_day", group);
}

std::optional<StoredEnergyPlan> energyPlanOn(const Collection& collection, const std::string& group,
                                             quantity::Date day) {
  return readOne<StoredEnergyPlan>(
      collection, "WHERE group_code = :code AND from_day <= :day ORDER BY from_day DESC", group, day);
}

std::vector<StoredHouseCaution> listHouseCautions(const Collection& collection) {
  return readAll<StoredHouseCaution>(collection, "ORDER BY code");
}

}  // namespace tarebowl::store
