// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/day_overview.h"

#include "core/animal/name_order.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/animal_reading.h"
#include "core/store/reading.h"
#include "core/transfer/bowls_of_day.h"
#include "core/transfer/kitchen_day.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace tarebowl::transfer {

namespace {

bool isWeighed(const intake::BowlItem& item) {
  return intake::entryThatCounts(item.weighings).has_value();
}

/// A bowl whose foods went in, of which nobody said what was left.
bool isLeftoverMissing(const intake::Bowl& bowl) {
  if (!bowl.remainders.empty()) return false;
  return std::ranges::any_of(bowl.items, [](const intake::BowlItem& item) {
    return isWeighed(item) && !item.swappedOut && item.leftovers.empty();
  });
}

/// Why a group has no bowl, where that asks for somebody to look.
bool lacksBowl(const GroupsDay& group) {
  if (!group.bowls.empty()) return false;
  const auto why = intake::noBowlOf(group.fed);
  return why && *why != intake::NoBowl::NothingPlanned;
}

void count(const GroupsDay& group, SectionToday& today) {
  today.bowls += group.bowls.size();
  today.groupsWithoutBowl += lacksBowl(group) ? 1 : 0;
  for (const intake::PrepBowl& bowl : group.bowls)
    for (const intake::BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      ++today.lines;
      today.weighed += isWeighed(item) ? 1 : 0;
    }
}

/// The sections in the order of their names.
std::vector<SectionToday> sectionsOn(const store::Collection& collection, quantity::Date day,
                                     const std::vector<store::StoredGroup>& groups) {
  std::map<std::string, SectionToday, decltype(&animal::goesBefore)> sections(&animal::goesBefore);
  for (const store::StoredGroup& group : groups)
    sections.try_emplace(group.record.section, SectionToday{.section = group.record.section});
  const BowlsByGroup opened = bowlsOpenedOn(collection, day);
  const quantity::Date before = intake::dayOfNumber(intake::dayNumber(day) - 1);
  const BowlsByGroup yesterday = bowlsOpenedOn(collection, before);
  for (GroupsDay& group : bowlsPlannedOn(collection, day, kitchenFoods(collection), BodyMass::LeftOut)) {
    SectionToday& today = sections[group.fed.section];
    takeOpened(opened, group);
    count(group, today);
    if (const auto own = yesterday.find(group.fed.code); own != yesterday.end())
      today.leftoversMissing +=
          static_cast<std::size_t>(std::ranges::count_if(own->second, isLeftoverMissing));
  }
  std::vector<SectionToday> found;
  found.reserve(sections.size());
  for (auto& [name, section] : sections) found.push_back(std::move(section));
  return found;
}

void nameFoods(const store::Collection& collection, DayOverview& overview) {
  const intake::FoodLookup foodOf = kitchenFoods(collection);
  std::set<std::string> codes;
  const auto name = [&](const std::string& code) {
    if (!code.empty()) codes.insert(code);
  };
  for (const auto* swaps : {&overview.swapsMade, &overview.swapsWaiting})
    for (const store::StoredSwap& swap : *swaps) {
      name(swap.record.food);
      for (const intake::GivenInstead& given : swap.record.given) name(given.food);
    }
  for (const store::StoredControlPan& pan : overview.pansThatStand) name(pan.record.food);
  for (const std::string& code : codes) store::askAhead(collection, [&] { return foodOf(code); });
  for (const std::string& code : codes) overview.foodNames.try_emplace(code, foodOf(code).name);
}

}  // namespace

DayOverview readDayOverview(const store::Collection& collection, quantity::Date day) {
  DayOverview overview{.day = day};
  const quantity::Date before = intake::dayOfNumber(intake::dayNumber(day) - 1);
  store::askAhead(
      collection, [&] { return store::listGroups(collection); },
      [&] { return bowlsOpenedOn(collection, day); }, [&] { return bowlsOpenedOn(collection, before); },
      [&] { return bowlsPlannedOn(collection, day, kitchenFoods(collection), BodyMass::LeftOut); },
      [&] { return store::swapsBetween(collection, day, day); },
      [&] { return store::swapsWaiting(collection); },
      [&] { return store::controlPansThatStand(collection); },
      [&] { return store::submittedVersions(collection); });
  const auto groups = store::listGroups(collection);
  overview.sections = sectionsOn(collection, day, groups);
  for (const store::StoredGroup& group : groups)
    overview.groups.emplace(group.record.code, DayOverview::Group{group.record.name, group.record.section});
  overview.swapsMade = store::swapsBetween(collection, day, day);
  overview.swapsWaiting = store::swapsWaiting(collection);
  overview.pansThatStand = store::controlPansThatStand(collection);
  std::erase_if(overview.pansThatStand,
                [day](const store::StoredControlPan& pan) { return pan.record.day > day; });
  nameFoods(collection, overview);
  const auto versions = store::submittedVersions(collection);
  for (const store::VersionLine& version : versions)
    store::askAhead(collection, [&] { return store::findDiet(collection, version.diet); });
  for (const store::VersionLine& version : versions)
    if (const auto diet = store::findDiet(collection, version.diet))
      overview.dietsWaiting.push_back({version, diet->record.name, diet->record.group});
  return overview;
}

}  // namespace tarebowl::transfer
