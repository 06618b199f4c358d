// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/group_reading.h"

#include "core/store/mass_series.h"
#include "core/store/profile_lineage.h"
#include "core/store/reading.h"

#include <optional>
#include <variant>
#include <vector>

namespace tarebowl::store {

namespace {

MassSeries readMembers(const Collection& collection, const std::string& group, quantity::Date day) {
  return readingsThatCount(
      collection, day,
      {"individual", "SELECT DISTINCT individual AS code FROM membership WHERE group_code = :group", group});
}

MassSeries readWhole(const Collection& collection, const std::string& group, quantity::Date day) {
  return readingsThatCount(collection, day,
                           {"group_code", "SELECT code FROM animal_group WHERE code = :group", group});
}

void readMass(const Collection& collection, quantity::Date day, KnownGroup& known) {
  const std::string& code = known.group.record.code;
  const MassSeries series = readMembers(collection, code, day);
  std::vector<std::optional<animal::CurrentMass>> members;
  for (const std::string& member : known.members) {
    members.push_back(massIn(series, member, day));
    known.memberMasses.push_back(members.back() ? std::optional(members.back()->mass) : std::nullopt);
  }
  const auto mass = animal::groupMass(members, massIn(readWhole(collection, code, day), code, day));
  if (!mass) return;
  known.bodyMass = mass->mass;
  known.weighed = mass->weighed;
}

void readTargets(const Collection& collection, quantity::Date day, KnownGroup& known) {
  const std::string& code = known.group.record.profile;
  if (code.empty()) return;
  const ProfileLineage lineage(collection, code);
  known.version = lineage.inForce(day);
  if (!known.version) return;
  auto resolved = animal::resolve(known.version->record.profile, lineage.lookup());
  if (auto* profile = std::get_if<animal::ResolvedProfile>(&resolved)) known.profile = std::move(*profile);
}

void readEnergy(const Collection& collection, quantity::Date day, KnownGroup& known) {
  known.energyPlan = energyPlanOn(collection, known.group.record.code, day);
  if (!known.energyPlan || !known.bodyMass) return;
  const std::optional<int> animals = known.headcount.value_or(0) > 0 ? known.headcount : std::nullopt;
  known.energy = animal::deriveEnergy(known.energyPlan->record.plan, *known.bodyMass, animals);
}

}  // namespace

std::optional<KnownGroup> knowGroup(const Collection& collection, const std::string& code,
                                    quantity::Date day) {
  askAhead(
      collection, [&] { return findGroup(collection, code); },
      [&] { return membershipsOfGroup(collection, code); },
      [&] { return readMembers(collection, code, day); }, [&] { return readWhole(collection, code, day); },
      [&] { return energyPlanOn(collection, code, day); });
  const auto group = findGroup(collection, code);
  if (!group) return std::nullopt;
  KnownGroup known{.group = *group};
  const auto stays = staysOf(membershipsOfGroup(collection, code));
  known.members = animal::membersOn(stays, code, day);
  askAhead(
      collection, [&] { return findSpecies(collection, group->record.species); },
      [&] { return ProfileLineage(collection, group->record.profile); });
  if (const auto species = findSpecies(collection, group->record.species)) known.species = species->record;
  known.headcount = animal::headcountOn(group->record, stays, day);
  readMass(collection, day, known);
  readTargets(collection, day, known);
  readEnergy(collection, day, known);
  return known;
}

}  // namespace tarebowl::store
