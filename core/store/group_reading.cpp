// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/group_reading.h"

#include "core/store/profile_lineage.h"
#include "core/store/reading.h"

#include <optional>
#include <variant>
#include <vector>

namespace tarebowl::store {

namespace {

void readMass(const Collection& collection, quantity::Date day, KnownGroup& known) {
  std::vector<std::optional<animal::CurrentMass>> members;
  for (const std::string& member : known.members)
    members.push_back(animal::massOn(readingsOf(massesOfIndividual(collection, member)), day));
  const auto whole = animal::massOn(readingsOf(massesOfGroup(collection, known.group.record.code)), day);
  const auto mass = animal::groupMass(members, whole);
  if (!mass) return;
  known.bodyMass = mass->mass;
  known.weighed = mass->weighed;
}

void readTargets(const Collection& collection, quantity::Date day, KnownGroup& known) {
  const std::string& code = known.group.record.profile;
  if (code.empty()) return;
  known.version = profileInForce(collection, code, day);
  const animal::ProfileLookup lineage = lineageOf(collection, code);  // asked together
  if (!known.version) return;
  auto resolved = animal::resolve(known.version->record.profile, lineage);
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
      [&] { return membershipsOfGroup(collection, code); }, [&] { return massesOfGroup(collection, code); },
      [&] { return energyPlanOn(collection, code, day); });
  const auto group = findGroup(collection, code);
  if (!group) return std::nullopt;
  KnownGroup known{.group = *group};
  const auto stays = staysOf(membershipsOfGroup(collection, code));
  known.members = animal::membersOn(stays, code, day);
  askAhead(
      collection, [&] { return findSpecies(collection, group->record.species); },
      [&] { return profileInForce(collection, group->record.profile, day); },
      [&] { return lineageOf(collection, group->record.profile); });
  for (const std::string& member : known.members)
    askAhead(collection, [&] { return massesOfIndividual(collection, member); });
  if (const auto species = findSpecies(collection, group->record.species)) known.species = species->record;
  known.headcount = animal::headcountOn(group->record, stays, day);
  readMass(collection, day, known);
  readTargets(collection, day, known);
  readEnergy(collection, day, known);
  return known;
}

}  // namespace tarebowl::store
