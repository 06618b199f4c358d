// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/group_reading.h"

#include <variant>

namespace tarebowl::store {

namespace {

/// The members' mean where any of them was weighed, or else the group's own.
void readMass(const Collection& collection, quantity::Date day, KnownGroup& known) {
  quantity::Kilograms sum;
  for (const std::string& member : known.members) {
    const auto current = animal::massOn(readingsOf(massesOfIndividual(collection, member)), day);
    if (!current) continue;
    sum += current->mass;
    ++known.weighed;
  }
  if (known.weighed > 0) {
    known.bodyMass = sum / static_cast<double>(known.weighed);
    return;
  }
  const std::string& code = known.group.record.code;
  if (const auto current = animal::massOn(readingsOf(massesOfGroup(collection, code)), day))
    known.bodyMass = current->mass;
}

void readTargets(const Collection& collection, quantity::Date day, KnownGroup& known) {
  const std::string& code = known.group.record.profile;
  if (code.empty()) return;
  known.version = profileInForce(collection, code, day);
  if (!known.version) return;
  auto resolved = animal::resolve(known.version->record.profile, profileLookup(collection));
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
  const auto group = findGroup(collection, code);
  if (!group) return std::nullopt;
  KnownGroup known{.group = *group};
  if (const auto species = findSpecies(collection, group->record.species)) known.species = species->record;
  const auto stays = staysOf(membershipsOfGroup(collection, code));
  known.members = animal::membersOn(stays, code, day);
  known.headcount = animal::headcountOn(group->record, stays, day);
  readMass(collection, day, known);
  readTargets(collection, day, known);
  readEnergy(collection, day, known);
  return known;
}

}  // namespace tarebowl::store
