// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/bowls_of_day.h"

#include "core/animal/name_order.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/diet_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/reading.h"
#include "core/store/rotation_verbs.h"
#include "core/transfer/day_of_rotation.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>
#include <utility>

namespace tarebowl::transfer {

using intake::DietOfDay;
using intake::GroupOfDay;
using intake::PrepBowl;
using quantity::Date;

namespace {

/// The diets that are fed on a day, by their groups' codes, in the order of their names.
using DietsByGroup = std::map<std::string, std::vector<DietOfDay>>;

Date dayBefore(Date day) {
  return intake::dayOfNumber(intake::dayNumber(day) - 1);
}

DietOfDay dietOfDay(const store::Collection& collection, const diet::NamedDiet& diet,
                    diet::DietVersion version, bool isPlanned, Date day) {
  const bool isPhasedIn = version.phaseInDays > 0 && version.fedFrom;
  const auto before = [&] { return store::fedOn(collection, diet.code, dayBefore(*version.fedFrom)); };
  const auto plan = [&] { return linesOfDay(collection, diet.code, version, day); };
  if (isPhasedIn && isPlanned) store::askAhead(collection, before, plan);
  DietOfDay made{.diet = diet};
  if (isPhasedIn)
    if (auto fed = before()) made.linesBefore = std::move(fed->record.version.lines);
  if (isPlanned) made.dayPlan = plan();
  made.version = std::move(version);
  return made;
}

DietsByGroup dietsFedOn(const store::Collection& collection, Date day,
                        const std::optional<std::string>& section, const std::set<std::string>& groups) {
  DietsByGroup diets;
  auto fed = store::everyDietFedOn(collection, day, section);
  const auto planned = store::versionsInRotationOn(collection, day);
  const auto all = store::listDiets(collection);
  const auto read = [&](const diet::NamedDiet& diet, diet::DietVersion version) {
    const bool isPlanned = planned.contains({diet.code, version.number});
    return dietOfDay(collection, diet, std::move(version), isPlanned, day);
  };
  const auto isWanted = [&](const diet::NamedDiet& diet) {
    return fed.contains(diet.code) && groups.contains(diet.group);
  };
  for (const store::StoredDiet& diet : all)
    if (isWanted(diet.record))
      store::askAhead(collection, [&] { return read(diet.record, fed.at(diet.record.code)); });
  for (const store::StoredDiet& diet : all)
    if (isWanted(diet.record))
      diets[diet.record.group].push_back(read(diet.record, std::move(fed.at(diet.record.code))));
  return diets;
}

/// All that may come into a bowl.
void askForFoods(const store::Collection& collection, const DietsByGroup& diets,
                 const intake::FoodLookup& foodOf) {
  const auto ask = [&](const std::string& code) {
    store::askAhead(collection, [&] { return foodOf(code); });
  };
  for (const auto& [group, own] : diets)
    for (const DietOfDay& diet : own) {
      for (const diet::DietLine& line : diet.version.lines) ask(line.food);
      for (const diet::DietLine& line : diet.linesBefore) ask(line.food);
      for (const diet::Allowance& allowance : diet.version.allowances) ask(allowance.food);
      if (diet.dayPlan)
        for (const diet::DietLine& line : *diet.dayPlan) ask(line.food);
    }
}

std::set<std::string> codesOf(const std::vector<store::HousedGroup>& groups) {
  std::set<std::string> codes;
  for (const store::HousedGroup& group : groups) codes.insert(group.group.record.code);
  return codes;
}

}  // namespace

std::vector<GroupsDay> bowlsPlannedOn(const store::Collection& collection, Date day,
                                      const intake::FoodLookup& foodOf, BodyMass bodyMass,
                                      const std::optional<std::string>& section) {
  const auto readMasses = [&] {
    return bodyMass == BodyMass::Read ? store::bodyMassesOn(collection, {}, day, section)
                                      : std::map<std::string, quantity::Kilograms>();
  };
  store::askAhead(
      collection, [&] { return store::groupsHousedOn(collection, day, section); }, readMasses,
      [&] { return store::everyDietFedOn(collection, day, section); },
      [&] { return store::versionsInRotationOn(collection, day); },
      [&] { return store::listDiets(collection); });
  auto housed = store::groupsHousedOn(collection, day, section);
  std::ranges::stable_sort(housed, animal::goesBefore, [](const store::HousedGroup& group) {
    return std::string_view(group.group.record.name);
  });
  std::map<std::string, quantity::Kilograms> masses;
  if (bodyMass == BodyMass::Read) masses = store::bodyMassesOn(collection, housed, day, section);
  DietsByGroup diets = dietsFedOn(collection, day, section, codesOf(housed));
  if (store::gathers(collection)) askForFoods(collection, diets, foodOf);
  std::vector<GroupsDay> days;
  days.reserve(housed.size());
  for (store::HousedGroup& group : housed) {
    GroupsDay& made = days.emplace_back(GroupsDay{.group = std::move(group)});
    const animal::Group& record = made.group.group.record;
    made.fed = {.code = record.code,
                .name = record.name,
                .section = record.section,
                .animals = made.group.headcount,
                .diets = std::move(diets[record.code])};
    if (const auto mass = masses.find(record.code); mass != masses.end()) made.fed.bodyMass = mass->second;
    made.bowls = intake::bowlsOf(made.fed, day, foodOf);
  }
  return days;
}

BowlsByGroup bowlsOpenedOn(const store::Collection& collection, Date day,
                           const std::optional<std::string>& section) {
  BowlsByGroup opened;
  for (intake::Bowl& bowl : store::bowlsOfDay(collection, day, section)) {
    auto& own = opened[bowl.key.group];
    own.push_back(std::move(bowl));
  }
  return opened;
}

void takeOpened(const BowlsByGroup& opened, GroupsDay& group) {
  const auto own = opened.find(group.fed.code);
  if (own == opened.end()) return;
  std::vector<PrepBowl>& bowls = group.bowls;
  std::vector<intake::Bowl> planned;
  planned.reserve(bowls.size());
  for (const PrepBowl& bowl : bowls) planned.push_back(bowl.bowl);
  const auto places = intake::sameBowls(own->second, planned);
  for (std::size_t i = 0; i < places.size(); ++i) {
    PrepBowl& place = places[i] ? bowls[*places[i]] : bowls.emplace_back();
    place.bowl = own->second[i];
    place.groupName = group.fed.name;
    place.bodyMass = group.fed.bodyMass;
    place.opened = true;
  }
  std::stable_partition(bowls.begin(), bowls.end(), [](const PrepBowl& bowl) { return bowl.opened; });
  int number = 0;
  for (PrepBowl& bowl : bowls) {
    if (!bowl.opened) bowl.bowl.key.bowl = number + 1;
    number = bowl.bowl.key.bowl;
  }
}

}  // namespace tarebowl::transfer
