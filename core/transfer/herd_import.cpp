// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/herd_import.h"

#include "core/animal/starter_profiles.h"
#include "core/exchange/herd_file.h"
#include "core/exchange/profile_json.h"
#include "core/store/animal_verbs.h"
#include "core/store/mass_verbs.h"
#include "core/store/profile_reading.h"
#include "core/store/profile_verbs.h"

namespace tarebowl::transfer {

namespace {

std::optional<std::string> named(const std::string& code) {
  return code.empty() ? std::nullopt : std::optional(code);
}

void addProfile(store::Collection& collection, const std::filesystem::path& folder,
                const exchange::HerdProfile& wanted, const store::Author& author) {
  const animal::TargetProfile profile = exchange::readProfile(folder / (wanted.code + ".json"));
  if (profile.parent && !store::findProfile(collection, *profile.parent))
    if (const auto* starter = animal::findStarterProfile(profile.parent->code))
      store::adoptStarter(collection, starter->profile, author);
  const store::Written written = store::addProfile(collection, profile, author);
  if (wanted.inForceFrom)
    store::putInForce(collection, store::ProfileId{written.id}, written.revision, *wanted.inForceFrom,
                      "in force when the collection was read in", author);
}

void addReadings(store::Collection& collection, const std::filesystem::path& folder,
                 const store::Author& author) {
  std::vector<store::MassRecord> masses;
  for (const exchange::HerdMass& mass : exchange::readMasses(folder / "masses.csv"))
    masses.push_back(
        {.individual = named(mass.individual), .group = named(mass.group), .reading = mass.reading});
  store::addMasses(collection, masses, author);
  for (const exchange::HerdCondition& condition : exchange::readConditions(folder / "conditions.csv"))
    store::addCondition(collection,
                        {.individual = named(condition.individual),
                         .group = named(condition.group),
                         .reading = condition.reading},
                        author);
}

}  // namespace

void importHerd(store::Collection& collection, const std::filesystem::path& folder,
                const store::Author& author) {
  const exchange::HerdFile herd = exchange::readHerd(folder / "animals.json");
  for (const exchange::HerdProfile& profile : herd.profiles)
    addProfile(collection, folder / "profiles", profile, author);
  for (const animal::Species& species : herd.species) store::addSpecies(collection, species, author);
  for (const animal::Individual& animal : herd.individuals) store::addIndividual(collection, animal, author);
  for (const animal::Group& group : herd.groups) store::addGroup(collection, group, author);
  for (const animal::Membership& stay : herd.memberships) store::addMembership(collection, stay, author);
  for (const exchange::HerdPlan& plan : herd.plans)
    store::addEnergyPlan(collection, {.group = plan.group, .from = plan.from, .plan = plan.plan}, author);
  addReadings(collection, folder, author);
}

}  // namespace tarebowl::transfer
