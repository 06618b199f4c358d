// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/profile_verbs.h"

#include "core/store/profile_tables.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::store {

namespace {

quantity::Date dayOf(const Collection::Inner& inner, const Author& author) {
  const auto day = quantity::dayOfTime(author.at);
  if (!day) refuse(inner, "\"" + author.at + "\" does not begin with a day");
  return *day;
}

std::vector<Row<ProfileRecord>> versionsOf(Collection::Inner& inner, const std::string& code) {
  return loadRows<ProfileRecord>(inner, "WHERE code = :code ORDER BY version", code);
}

animal::TargetProfile profileOf(Collection::Inner& inner, ProfileId id) {
  auto row = loadById<ProfileRecord>(inner, static_cast<long long>(id));
  if (!row) throw ConflictError(inner.file(), "the target profile", "", "");
  return std::move(row->record.profile);
}

Written addNextVersion(Collection::Inner& inner, const animal::TargetProfile& profile, const Author& author) {
  ProfileRecord next{.profile = profile};
  for (const Row<ProfileRecord>& version : versionsOf(inner, profile.code)) {
    const animal::TargetProfile& known = version.record.profile;
    if (known.starter)
      refuse(inner, "a starter profile is not edited: derive a profile of the house from it");
    if (version.record.steps.empty())
      refuse(inner, fmt::format("version {} of {} is still a draft", known.version, known.code));
    next.profile.version = known.version + 1;
  }
  return addWithin(inner, next, "draft next version of target profile", author);
}

void refuseSettled(const Collection::Inner& inner, const ProfileRecord& record) {
  if (record.steps.empty()) return;
  refuse(inner, fmt::format("{} {} was put in force and never changes: draft the next version of it",
                            record.profile.code, record.profile.version));
}

Written addStep(Collection& collection, ProfileId id, int seenRevision, const std::string& verb,
                const ProfileStep& step, const Author& author) {
  return changeThing<ProfileRecord>(
      collection, static_cast<long long>(id), seenRevision, verb, author, "",
      [&](Collection::Inner&, ProfileRecord& record) { record.steps.push_back(step); });
}

}  // namespace

Written addProfile(Collection& collection, const animal::TargetProfile& profile, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    if (profile.starter)
      refuse(inner, "a starter profile comes with the program: adopt it or derive from it");
    if (!versionsOf(inner, profile.code).empty())
      refuse(inner, "there is another target profile with the code " + profile.code);
    ProfileRecord fresh{.profile = profile};
    fresh.profile.version = 1;
    return addWithin(inner, fresh, "add target profile", author);
  });
}

Written draftNextVersion(Collection& collection, ProfileId from, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    return addNextVersion(inner, profileOf(inner, from), author);
  });
}

Written draftNextVersion(Collection& collection, ProfileId from, const animal::TargetProfile& profile,
                         const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    if (profile.code != profileOf(inner, from).code)
      refuse(inner, "the next version of a profile has the same code");
    return addNextVersion(inner, profile, author);
  });
}

Written editProfile(Collection& collection, ProfileId id, int seenRevision,
                    const animal::TargetProfile& profile, const Author& author) {
  return changeThing<ProfileRecord>(
      collection, static_cast<long long>(id), seenRevision, "edit target profile", author,
      stateOf(ProfileRecord{.profile = profile}), [&](Collection::Inner& inner, ProfileRecord& record) {
        refuseSettled(inner, record);
        if (profile.code != record.profile.code || profile.version != record.profile.version)
          refuse(inner, "the code and the version of a profile stay");
        if (profile.starter) refuse(inner, "a profile of the house is no starter");
        record.profile = profile;
      });
}

Written removeProfile(Collection& collection, ProfileId id, int seenRevision, const Author& author) {
  return removeThing<ProfileRecord>(
      collection, static_cast<long long>(id), seenRevision, author,
      [](Collection::Inner& inner, const ProfileRecord& record) { refuseSettled(inner, record); });
}

Written putInForce(Collection& collection, ProfileId id, int seenRevision, quantity::Date from,
                   const std::string& reason, const Author& author) {
  return addStep(collection, id, seenRevision, "put target profile in force",
                 {ProfileStepKind::PutInForce, from, author.who, author.at, reason}, author);
}

Written retireProfile(Collection& collection, ProfileId id, int seenRevision, quantity::Date from,
                      const std::string& reason, const Author& author) {
  return addStep(collection, id, seenRevision, "retire target profile",
                 {ProfileStepKind::Retired, from, author.who, author.at, reason}, author);
}

Written adoptStarter(Collection& collection, const animal::TargetProfile& profile, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    if (!profile.starter) refuse(inner, profile.code + " is no starter profile");
    ProfileRecord adopted{.profile = profile};
    adopted.profile.version = 1;
    for (const Row<ProfileRecord>& known : versionsOf(inner, profile.code)) {
      if (!known.record.profile.starter)
        refuse(inner, "there is a profile of the house with the code " + profile.code);
      adopted.profile.version = known.record.profile.version;
      if (adopted.profile == known.record.profile) return {known.id, known.revision, 0};
      ++adopted.profile.version;
    }
    adopted.steps.push_back({ProfileStepKind::PutInForce, dayOf(inner, author), author.who, author.at,
                             "published; came with the program"});
    return addWithin(inner, adopted, "adopt starter profile", author);
  });
}

Written addEnergyPlan(Collection& collection, const EnergyPlanRecord& plan, const Author& author) {
  return addThing(collection, plan, author);
}

Written editEnergyPlan(Collection& collection, EnergyPlanId id, int seenRevision,
                       const EnergyPlanRecord& plan, const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, plan, author);
}

Written removeEnergyPlan(Collection& collection, EnergyPlanId id, int seenRevision, const Author& author) {
  return removeThing<EnergyPlanRecord>(collection, static_cast<long long>(id), seenRevision, author);
}

Written addHouseCaution(Collection& collection, const animal::FoodCaution& caution, const Author& author) {
  return addThing(collection, caution, author);
}

Written editHouseCaution(Collection& collection, HouseCautionId id, int seenRevision,
                         const animal::FoodCaution& caution, const Author& author) {
  return editThing(collection, static_cast<long long>(id), seenRevision, caution, author);
}

Written removeHouseCaution(Collection& collection, HouseCautionId id, int seenRevision,
                           const Author& author) {
  return removeThing<animal::FoodCaution>(collection, static_cast<long long>(id), seenRevision, author);
}

}  // namespace tarebowl::store
