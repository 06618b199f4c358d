// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/kitchen_day.h"

#include "core/animal/caution.h"
#include "core/animal/name_order.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/kitchen_food_reading.h"
#include "core/store/reading.h"
#include "core/transfer/bowls_of_day.h"
#include "core/transfer/group_facts.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <memory>
#include <set>
#include <utility>

namespace tarebowl::transfer {

using intake::GroupOfDay;
using intake::KitchenFood;
using intake::PrepBowl;
using intake::PrepSheet;
using quantity::Date;

namespace {

KitchenFood readFood(const store::Collection& collection, const std::string& code) {
  return store::findKitchenFood(collection, code)
      .value_or(KitchenFood{.code = code, .name = code, .known = false});
}

/// One sentence for each food that is cautioned for the animals, however many bowls it is in.
void addCautions(const std::vector<PrepBowl>& bowls, const store::HousedGroup& group,
                 const intake::FoodLookup& foodOf, const std::vector<animal::FoodCaution>& cautions,
                 std::set<std::string>& told) {
  for (const PrepBowl& bowl : bowls)
    for (const intake::BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      const KitchenFood food = foodOf(item.food);
      const animal::CautionedFood looked{food.code, food.name, food.form, food.group, {}};
      for (const animal::FoodCaution* caution : animal::cautionsFor(looked, group.species.taxa, cautions))
        if (caution->severity != animal::CautionSeverity::Consider)
          told.insert(group.group.record.name + ": " + food.name + ": " + caution->reason +
                      (caution->advice.empty() ? "" : ". " + caution->advice));
    }
}

void addTomorrow(const store::Collection& collection, const intake::FoodLookup& foodOf, PrepSheet& sheet) {
  const Date tomorrow = intake::dayOfNumber(intake::dayNumber(sheet.day) + 1);
  std::vector<PrepBowl> bowls;
  for (GroupsDay& group : bowlsPlannedOn(collection, tomorrow, foodOf, BodyMass::LeftOut, sheet.section))
    std::ranges::move(group.bowls, std::back_inserter(bowls));
  for (intake::KitchenTotal& total : intake::totalsOf(bowls, foodOf)) {
    if (intake::isThawed(total.food)) sheet.thawForTomorrow.push_back(total);
    if (intake::isLive(total.food)) sheet.gutLoadForTomorrow.push_back(std::move(total));
  }
}

}  // namespace

intake::FoodLookup kitchenFoods(const store::Collection& collection) {
  const auto known = std::make_shared<std::map<std::string, KitchenFood>>();
  return [known, &collection](const std::string& code) {
    const auto place = known->find(code);
    return place != known->end() ? place->second
                                 : known->emplace(code, readFood(collection, code)).first->second;
  };
}

std::vector<std::string> sectionsOf(const store::Collection& collection) {
  std::set<std::string, decltype(&animal::goesBefore)> sections(&animal::goesBefore);
  for (const store::StoredGroup& group : store::listGroups(collection)) sections.insert(group.record.section);
  return {sections.begin(), sections.end()};
}

PrepSheet readPrepSheet(const store::Collection& collection, const std::string& section, Date day) {
  PrepSheet sheet{.section = section, .day = day};
  const intake::FoodLookup foodOf = kitchenFoods(collection);
  const Date tomorrow = intake::dayOfNumber(intake::dayNumber(day) + 1);
  store::askAhead(
      collection, [&] { return bowlsOpenedOn(collection, day, section); },
      [&] { return houseCautions(collection); },
      [&] { return bowlsPlannedOn(collection, day, foodOf, BodyMass::Read, section); },
      [&] { return bowlsPlannedOn(collection, tomorrow, foodOf, BodyMass::LeftOut, section); });
  const BowlsByGroup opened = bowlsOpenedOn(collection, day, section);
  const auto cautions = houseCautions(collection);
  std::vector<animal::FoodCaution> known(animal::knownCautions().begin(), animal::knownCautions().end());
  known.insert(known.end(), cautions.begin(), cautions.end());
  std::set<std::string> told;
  for (const auto& [group, bowls] : opened)
    for (const intake::Bowl& bowl : bowls)
      for (const intake::BowlItem& item : bowl.items)
        store::askAhead(collection, [&] { return foodOf(item.food); });
  for (GroupsDay& group : bowlsPlannedOn(collection, day, foodOf, BodyMass::Read, section)) {
    takeOpened(opened, group);
    if (group.bowls.empty())
      if (const auto why = intake::noBowlOf(group.fed))
        sheet.withoutBowl.push_back({group.fed.code, group.fed.name, *why});
    addCautions(group.bowls, group.group, foodOf, known, told);
    sheet.invented = sheet.invented || group.group.group.record.invented;
    std::ranges::move(group.bowls, std::back_inserter(sheet.bowls));
  }
  sheet.cautions.assign(told.begin(), told.end());
  sheet.totals = intake::totalsOf(sheet.bowls, foodOf);
  addTomorrow(collection, foodOf, sheet);
  return sheet;
}

store::OpenedSheet openDay(store::Collection& collection, const PrepSheet& sheet,
                           const store::Author& author) {
  std::vector<intake::Bowl> bowls;
  for (const PrepBowl& bowl : sheet.bowls)
    if (!bowl.opened) bowls.push_back(bowl.bowl);
  return store::openSheet(collection, sheet.section, sheet.day, bowls, author);
}

quantity::Grams toleranceIn(const PrepBowl& bowl, const std::string& food, const JudgedBy& by) {
  intake::ToleranceFacts facts{.step = by.foodOf(food).step, .bowl = bowl.total()};
  if (bowl.bodyMass) facts.bodyMass = *bowl.bodyMass * bowl.bowl.animals;
  return intake::toleranceOf(by.rule, facts);
}

std::vector<intake::WeighingDoubt> doubtsIn(const PrepBowl& bowl, const intake::BowlItem& item,
                                            quantity::Grams actual, const std::string& at, const JudgedBy& by,
                                            const std::optional<intake::WeightBefore>& before) {
  return intake::doubtsAbout(actual, at,
                             {.day = bowl.bowl.key.day,
                              .planned = item.planned,
                              .tolerance = toleranceIn(bowl, item.food, by),
                              .before = before});
}

}  // namespace tarebowl::transfer
