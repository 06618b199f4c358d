// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/animal_page.h"

#include "core/animal/name_order.h"
#include "core/store/profile_lineage.h"
#include "core/store/reading.h"

#include <algorithm>
#include <string_view>

namespace tarebowl::ui {
namespace {

template <class Stored>
const Stored* byCode(const std::vector<Stored>& things, const std::string& code) {
  const auto found =
      std::find_if(things.begin(), things.end(), [&](const Stored& one) { return one.record.code == code; });
  return found == things.end() ? nullptr : &*found;
}

void findDoubts(MeasuredSeries& series, const AnimalPage& page, quantity::Date today) {
  series.doubts = animal::doubtsAbout(store::readingsOf(series.masses), today, page.expectedMass);
}

MeasuredSeries seriesOfIndividual(const store::Collection& collection, const std::string& code) {
  store::askAhead(
      collection, [&] { return store::massesOfIndividual(collection, code); },
      [&] { return store::conditionsOfIndividual(collection, code); });
  return {.code = code,
          .ofGroup = false,
          .masses = store::massesOfIndividual(collection, code),
          .conditions = store::conditionsOfIndividual(collection, code)};
}

/// Of the animal; of the group and of each of its members.
void askForSeries(const store::Collection& collection, const AnimalPage& page, quantity::Date today) {
  const auto ask = [&](const std::string& individual) {
    store::askAhead(collection, [&] { return seriesOfIndividual(collection, individual); });
  };
  if (page.individual) ask(page.individual->record.code);
  if (!page.group) return;
  const std::string& code = page.group->record.code;
  for (const std::string& member : animal::membersOn(store::staysOf(page.stays), code, today)) ask(member);
}

void readSeries(const store::Collection& collection, AnimalPage& page, quantity::Date today) {
  if (store::gathers(collection)) askForSeries(collection, page, today);
  if (page.individual) page.series.push_back(seriesOfIndividual(collection, page.individual->record.code));
  if (page.group) {
    const std::string& code = page.group->record.code;
    page.series.push_back({.code = code,
                           .ofGroup = true,
                           .masses = store::massesOfGroup(collection, code),
                           .conditions = store::conditionsOfGroup(collection, code)});
    for (const std::string& member : animal::membersOn(store::staysOf(page.stays), code, today))
      page.series.push_back(seriesOfIndividual(collection, member));
  }
  for (MeasuredSeries& series : page.series) findDoubts(series, page, today);
}

void readProfiles(const store::Collection& collection, AnimalPage& page, quantity::Date today) {
  if (!page.group) return;
  for (const store::StoredProfile& one : store::listProfiles(collection)) {
    const animal::TargetProfile& profile = one.record.profile;
    if (page.profileNames.empty() || page.profileNames.back().code != profile.code)
      page.profileNames.push_back({profile.code, profile.name});
    page.profileNames.back().name = profile.name;  // as its newest version says it
  }
  if (page.group->record.profile.empty()) return;
  const store::ProfileLineage lineage(collection, page.group->record.profile);
  const auto versions = lineage.versions();
  for (const store::StoredProfile& version : versions)
    page.profiles.push_back({.stored = version,
                             .state = store::stateOn(version.record, versions, today),
                             .resolved = animal::resolve(version.record.profile, lineage.lookup())});
}

/// Those of the list that concern the species, whatever the food: as of a food to which all of them belong.
void readCautions(const store::Collection& collection, AnimalPage& page) {
  const auto known = animal::knownCautions();
  std::vector<animal::FoodCaution> all(known.begin(), known.end());
  for (const store::StoredHouseCaution& house : store::listHouseCautions(collection))
    all.push_back(house.record);
  std::vector<std::string> ids;
  for (const animal::FoodCaution& caution : all) ids.push_back(caution.id);
  animal::CautionedFood anyFood;
  anyFood.cautions = ids;
  for (const animal::FoodCaution* caution : animal::cautionsFor(anyFood, page.species.record.taxa, all))
    page.cautions.push_back(*caution);
}

/// What rests on the group alone.
void askForGroup(const store::Collection& collection, const animal::Group& group) {
  store::askAhead(
      collection, [&] { return store::membershipsOfGroup(collection, group.code); },
      [&] { return store::energyPlansOf(collection, group.code); },
      [&] { return store::massesOfGroup(collection, group.code); },
      [&] { return store::conditionsOfGroup(collection, group.code); },
      [&] { return store::ProfileLineage(collection, group.profile); });
}

/// Fills in the thing itself; false where it, or its species, is not there.
bool readThing(const store::Collection& collection, AnimalPage& page) {
  std::optional<store::StoredSpecies> species;
  switch (page.place.kind) {
    case AnimalKind::Species:
      species = store::findSpecies(collection, store::SpeciesId{page.place.id});
      break;
    case AnimalKind::Group:
      page.group = store::findGroup(collection, store::GroupId{page.place.id});
      if (page.group) {
        askForGroup(collection, page.group->record);
        species = store::findSpecies(collection, page.group->record.species);
      }
      break;
    case AnimalKind::Individual:
      page.individual = store::findIndividual(collection, store::IndividualId{page.place.id});
      if (page.individual) species = store::findSpecies(collection, page.individual->record.species);
      break;
  }
  if (species) page.species = *species;
  return species.has_value();
}

}  // namespace

const store::StoredSpecies* Herd::speciesOf(const std::string& code) const {
  return byCode(species, code);
}

const store::StoredGroup* Herd::groupOf(const std::string& code) const {
  return byCode(groups, code);
}

const store::StoredIndividual* Herd::individualOf(const std::string& code) const {
  return byCode(individuals, code);
}

Herd readHerd(const store::Collection& collection) {
  store::askAhead(
      collection, [&] { return store::listSpecies(collection); },
      [&] { return store::listGroups(collection); }, [&] { return store::listIndividuals(collection); },
      [&] { return store::listMemberships(collection); });
  Herd herd{.species = store::listSpecies(collection),
            .groups = store::listGroups(collection),
            .individuals = store::listIndividuals(collection),
            .stays = store::listMemberships(collection)};
  std::ranges::stable_sort(herd.groups, animal::goesBefore, [](const store::StoredGroup& group) {
    return std::string_view(group.record.name);
  });
  return herd;
}

std::optional<AnimalPage> readAnimalPage(const store::Collection& collection, const AnimalPlace& place,
                                         quantity::Date today) {
  AnimalPage page{.place = place};
  store::askAhead(
      collection, [&] { return readThing(collection, page); },
      [&] { return store::listIndividuals(collection); }, [&] { return store::listProfiles(collection); },
      [&] { return store::listHouseCautions(collection); });
  if (!readThing(collection, page)) return std::nullopt;
  const animal::Species& species = page.species.record;
  store::askAhead(collection, [&] { return store::expectedMass(collection, species.code); });
  if (page.group) page.stays = store::membershipsOfGroup(collection, page.group->record.code);
  if (page.individual) page.stays = store::membershipsOfIndividual(collection, page.individual->record.code);
  for (store::StoredIndividual& one : store::listIndividuals(collection))
    if (one.record.species == species.code) page.animals.push_back(std::move(one));
  page.expectedMass = store::expectedMass(collection, species.code);
  readSeries(collection, page, today);
  if (page.group) page.plans = store::energyPlansOf(collection, page.group->record.code);
  readProfiles(collection, page, today);
  readCautions(collection, page);
  return page;
}

std::optional<PageMass> massOf(const AnimalPage& page, quantity::Date today) {
  PageMass all;
  double sum = 0.0;
  std::optional<PageMass> asAWhole;
  for (const MeasuredSeries& series : page.series) {
    const auto current = animal::massOn(store::readingsOf(series.masses), today);
    if (!current) continue;
    if (series.ofGroup) {
      asAWhole = PageMass{current->mass, 0, current->readings, current->on};
      continue;
    }
    ++all.animals;
    sum += current->mass.value();
    all.readings += current->readings;
    all.newest = all.animals == 1 ? current->on : std::max(all.newest, current->on);
  }
  if (all.animals == 0) return asAWhole;
  all.mass = quantity::Kilograms(sum / all.animals);
  return all;
}

std::optional<int> headcountOf(const AnimalPage& page, quantity::Date today) {
  if (!page.group) return std::nullopt;
  return animal::headcountOn(page.group->record, store::staysOf(page.stays), today);
}

const MeasuredSeries* seriesOf(const AnimalPage& page, const std::string& code) {
  for (const MeasuredSeries& series : page.series)
    if (series.code == code) return &series;
  return nullptr;
}

const ProfileInSight* profileToShow(const AnimalPage& page) {
  for (const ProfileInSight& profile : page.profiles)
    if (profile.state == store::ProfileState::InForce) return &profile;
  return page.profiles.empty() ? nullptr : &page.profiles.back();
}

}  // namespace tarebowl::ui
