// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/day_overview.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/animal_reading.h"
#include "core/store/feeding_reading.h"
#include "core/transfer/kitchen_day.h"

#include <algorithm>

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

SectionToday sectionOn(const store::Collection& collection, const std::string& section, quantity::Date day) {
  SectionToday today{.section = section};
  const intake::PrepSheet sheet = readPrepSheet(collection, section, day);
  today.bowls = sheet.bowls.size();
  today.groupsWithoutBowl = static_cast<std::size_t>(std::ranges::count_if(
      sheet.withoutBowl, [](const auto& group) { return group.why != intake::NoBowl::NothingPlanned; }));
  for (const intake::PrepBowl& bowl : sheet.bowls)
    for (const intake::BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      ++today.lines;
      today.weighed += isWeighed(item) ? 1 : 0;
    }
  const quantity::Date before = intake::dayOfNumber(intake::dayNumber(day) - 1);
  const auto yesterday = store::bowlsOfDay(collection, before, section);
  today.leftoversMissing = static_cast<std::size_t>(std::ranges::count_if(yesterday, isLeftoverMissing));
  return today;
}

void nameFoods(const store::Collection& collection, DayOverview& overview) {
  const intake::FoodLookup foodOf = kitchenFoods(collection);
  const auto name = [&](const std::string& code) {
    if (!code.empty()) overview.foodNames.try_emplace(code, foodOf(code).name);
  };
  for (const auto* swaps : {&overview.swapsMade, &overview.swapsWaiting})
    for (const store::StoredSwap& swap : *swaps) {
      name(swap.record.food);
      for (const intake::GivenInstead& given : swap.record.given) name(given.food);
    }
  for (const store::StoredControlPan& pan : overview.pansThatStand) name(pan.record.food);
}

}  // namespace

DayOverview readDayOverview(const store::Collection& collection, quantity::Date day) {
  DayOverview overview{.day = day};
  for (const std::string& section : sectionsOf(collection))
    overview.sections.push_back(sectionOn(collection, section, day));
  for (const store::StoredGroup& group : store::listGroups(collection))
    overview.groups.emplace(group.record.code, DayOverview::Group{group.record.name, group.record.section});
  overview.swapsMade = store::swapsBetween(collection, day, day);
  overview.swapsWaiting = store::swapsWaiting(collection);
  overview.pansThatStand = store::controlPansThatStand(collection);
  std::erase_if(overview.pansThatStand,
                [day](const store::StoredControlPan& pan) { return pan.record.day > day; });
  nameFoods(collection, overview);
  for (const store::VersionLine& version : store::listVersions(collection)) {
    if (version.state != diet::VersionState::Submitted) continue;
    const auto diet = store::findDiet(collection, version.diet);
    if (diet) overview.dietsWaiting.push_back({version, diet->record.name, diet->record.group});
  }
  return overview;
}

}  // namespace tarebowl::transfer
