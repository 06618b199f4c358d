// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/new_species.h"

#include "core/store/animal_verbs.h"
#include "core/store/mass_verbs.h"
#include "core/store/profile_reading.h"
#include "core/store/profile_verbs.h"

#include <QCoreApplication>

#include <algorithm>
#include <memory>
#include <utility>

namespace tarebowl::ui {
namespace {

struct Told {
  Q_DECLARE_TR_FUNCTIONS(Told)
};

/// The version under which the collection keeps a starter: the newest, which adopting it has made.
animal::ProfileReference keptAs(const store::Collection& collection, const std::string& code) {
  const auto versions = store::versionsOfProfile(collection, code);
  return {code, versions.empty() ? 1 : versions.back().record.profile.version};
}

CollectionVerb adopting(const animal::TargetProfile& starter) {
  return [starter](store::Collection& collection, const store::Author& author) {
    return store::adoptStarter(collection, starter, author);
  };
}

/// The profile as a draft, and then in force.
std::vector<CollectionVerb> verbsForProfile(const animal::TargetProfile& profile, quantity::Date today) {
  const auto made = std::make_shared<store::Written>();
  return {[profile, made](store::Collection& collection, const store::Author& author) {
            animal::TargetProfile derived = profile;
            if (derived.parent) derived.parent = keptAs(collection, derived.parent->code);
            *made = store::addProfile(collection, derived, author);
            return *made;
          },
          [made, today, why = profile.whyModel](store::Collection& collection, const store::Author& author) {
            return store::putInForce(collection, store::ProfileId{made->id}, made->revision, today, why,
                                     author);
          }};
}

std::vector<CollectionVerb> verbsForGroup(const NewSpecies& told, quantity::Date today) {
  animal::Group group = told.group;
  group.profile = told.profile.code;
  if (told.headcount) group.counts = {{today, *told.headcount}};
  std::vector<CollectionVerb> verbs{[group](store::Collection& collection, const store::Author& author) {
    return store::addGroup(collection, group, author);
  }};
  if (told.mass)
    verbs.emplace_back([group = group.code, reading = animal::MassReading{.on = today, .mass = *told.mass}](
                           store::Collection& collection, const store::Author& author) {
      return store::addMass(collection, {.group = group, .reading = reading}, store::Confirmed::Yes, author);
    });
  if (told.energy)
    verbs.emplace_back(
        [plan = store::EnergyPlanRecord{.group = group.code, .from = today, .plan = *told.energy}](
            store::Collection& collection, const store::Author& author) {
          return store::addEnergyPlan(collection, plan, author);
        });
  return verbs;
}

}  // namespace

QStringList missingOf(const NewSpecies& told) {
  QStringList missing;
  if (told.species.name.empty()) missing << Told::tr("the species' name");
  if (told.species.scientificName.empty()) missing << Told::tr("its scientific name");
  if (told.species.taxa.empty()) missing << Told::tr("the groups of animals it belongs to");
  if (told.model.empty()) missing << Told::tr("a model species");
  if (!told.model.empty() && told.profile.whyModel.empty())
    missing << Told::tr("a sentence on why the model stands in");
  if (told.group.name.empty()) missing << Told::tr("a name for the group");
  if (!told.headcount) missing << Told::tr("how many animals there are");
  if (!told.mass) missing << Told::tr("the mass of one animal");
  if (!told.energy) missing << Told::tr("how the energy need is worked out");
  return missing;
}

CollectionEdit editThatMakes(const NewSpecies& told, quantity::Date today) {
  CollectionEdit edit{
      .verb = [species = told.species](
                  store::Collection& collection,
                  const store::Author& author) { return store::addSpecies(collection, species, author); },
      .what = Told::tr("take in %1").arg(QString::fromStdString(told.species.name))};
  for (const animal::TargetProfile& starter : told.model) edit.further.push_back(adopting(starter));
  for (CollectionVerb& verb : verbsForProfile(told.profile, today)) edit.further.push_back(std::move(verb));
  for (CollectionVerb& verb : verbsForGroup(told, today)) edit.further.push_back(std::move(verb));
  return edit;
}

animal::TargetProfile profileFrom(const animal::TargetProfile& model) {
  animal::TargetProfile profile;
  profile.parent = animal::ProfileReference{model.code, model.version};
  profile.modelSpecies = model.modelSpecies;
  profile.kcalPerGramDryMatter = model.kcalPerGramDryMatter;
  profile.dryMatterFraction = model.dryMatterFraction;
  return profile;
}

CollectionEdit editThatFeeds(const store::StoredGroup& group, const ModelChoice& choice,
                             const std::string& code, quantity::Date today) {
  animal::TargetProfile profile = profileFrom(choice.model.back());
  profile.code = code;
  profile.name = group.record.name;
  profile.whyModel = choice.why;
  CollectionEdit edit{
      .verb = adopting(choice.model.front()),
      .what = Told::tr("start the targets of %1 from a model").arg(QString::fromStdString(profile.name))};
  for (std::size_t i = 1; i < choice.model.size(); ++i) edit.further.push_back(adopting(choice.model[i]));
  for (CollectionVerb& verb : verbsForProfile(profile, today)) edit.further.push_back(std::move(verb));
  animal::Group after = group.record;
  after.profile = code;
  edit.further.push_back([id = group.id, revision = group.revision, after](store::Collection& collection,
                                                                           const store::Author& author) {
    return store::editGroup(collection, id, revision, after, author);
  });
  return edit;
}

std::vector<animal::TargetProfile> lineOf(const animal::TargetProfile& starter,
                                          const animal::ProfileLookup& lookup) {
  const auto resolved = animal::resolve(starter, lookup);
  const auto* sound = std::get_if<animal::ResolvedProfile>(&resolved);
  if (sound == nullptr) return {};
  std::vector<animal::TargetProfile> line{starter};
  for (const animal::ProfileReference& ancestor : sound->ancestors) line.push_back(lookup(ancestor).value());
  std::reverse(line.begin(), line.end());
  return line;
}

}  // namespace tarebowl::ui
