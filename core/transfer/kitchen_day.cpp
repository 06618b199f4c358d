// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/transfer/kitchen_day.h"

#include "core/animal/caution.h"
#include "core/animal/name_order.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/diet_reading.h"
#include "core/store/feeding_reading.h"
#include "core/store/food_reading.h"
#include "core/store/group_reading.h"
#include "core/transfer/day_of_rotation.h"
#include "core/transfer/group_facts.h"

#include <algorithm>
#include <map>
#include <memory>
#include <set>
#include <string_view>

namespace tarebowl::transfer {

using intake::GroupOfDay;
using intake::KitchenFood;
using intake::PrepBowl;
using intake::PrepSheet;
using quantity::Date;

namespace {

KitchenFood readFood(const store::Collection& collection, const std::string& code) {
  KitchenFood made{.code = code, .name = code, .known = false};
  const auto stored = store::findFood(collection, code);
  if (!stored) return made;
  const food::Food& food = stored->record.food;
  made = {.code = code,
          .name = food.name,
          .form = food.form,
          .group = food.group,
          .step = food.scaleStep,
          .unitMass = food.unitMass,
          .edibleFraction = food.edibleFraction,
          .inStock = food.inStock};
  if (const auto& cooking = stored->record.cooking) {
    made.raw = cooking->rawCode;
    made.yield = cooking->massYield;
    if (const auto raw = store::findFood(collection, made.raw)) {
      made.rawName = raw->record.food.name;
      made.rawEdibleFraction = raw->record.food.edibleFraction;
    }
  }
  return made;
}

Date dayBefore(Date day) {
  return intake::dayOfNumber(intake::dayNumber(day) - 1);
}

std::optional<intake::DietOfDay> dietOn(const store::Collection& collection, const store::StoredDiet& diet,
                                        Date day) {
  auto fed = store::fedOn(collection, diet.record.code, day);
  if (!fed) return std::nullopt;
  intake::DietOfDay made{.diet = diet.record, .version = std::move(fed->record.version)};
  if (made.version.phaseInDays > 0 && made.version.fedFrom)
    if (const auto before = store::fedOn(collection, diet.record.code, dayBefore(*made.version.fedFrom)))
      made.linesBefore = before->record.version.lines;
  made.dayPlan = linesOfDay(collection, diet.record.code, made.version, day);
  return made;
}

/// The group and what it is fed on the day.
GroupOfDay groupOn(const store::Collection& collection, const store::KnownGroup& known,
                   const std::vector<store::StoredDiet>& diets, Date day) {
  const animal::Group& group = known.group.record;
  GroupOfDay made{.code = group.code,
                  .name = group.name,
                  .section = group.section,
                  .animals = known.headcount,
                  .bodyMass = known.bodyMass};
  for (const store::StoredDiet& diet : diets)
    if (diet.record.group == group.code)
      if (auto fed = dietOn(collection, diet, day)) made.diets.push_back(std::move(*fed));
  return made;
}

std::vector<intake::Bowl> bowlsOfGroup(const std::vector<intake::Bowl>& bowls, const std::string& group) {
  std::vector<intake::Bowl> own;
  for (const intake::Bowl& bowl : bowls)
    if (bowl.key.group == group) own.push_back(bowl);
  return own;
}

/// Bowls as they were opened go in the place of those that the diets ask for.
void takeOpened(const std::vector<intake::Bowl>& opened, const GroupOfDay& group,
                std::vector<PrepBowl>& bowls) {
  std::vector<intake::Bowl> planned;
  planned.reserve(bowls.size());
  for (const PrepBowl& bowl : bowls) planned.push_back(bowl.bowl);
  const auto places = intake::sameBowls(opened, planned);
  for (std::size_t i = 0; i < opened.size(); ++i) {
    PrepBowl& place = places[i] ? bowls[*places[i]] : bowls.emplace_back();
    place.bowl = opened[i];
    place.groupName = group.name;
    place.bodyMass = group.bodyMass;
    place.opened = true;
  }
  std::stable_partition(bowls.begin(), bowls.end(), [](const PrepBowl& bowl) { return bowl.opened; });
  int number = 0;
  for (PrepBowl& bowl : bowls) {
    if (!bowl.opened) bowl.bowl.key.bowl = number + 1;
    number = bowl.bowl.key.bowl;
  }
}

/// One sentence for each food that is cautioned for the animals, however many bowls it is in.
void addCautions(const std::vector<PrepBowl>& bowls, const store::KnownGroup& known,
                 const intake::FoodLookup& foodOf, const std::vector<animal::FoodCaution>& cautions,
                 std::set<std::string>& told) {
  for (const PrepBowl& bowl : bowls)
    for (const intake::BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      const KitchenFood food = foodOf(item.food);
      const animal::CautionedFood looked{food.code, food.name, food.form, food.group, {}};
      for (const animal::FoodCaution* caution : animal::cautionsFor(looked, known.species.taxa, cautions))
        if (caution->severity != animal::CautionSeverity::Consider)
          told.insert(known.group.record.name + ": " + food.name + ": " + caution->reason +
                      (caution->advice.empty() ? "" : ". " + caution->advice));
    }
}

std::vector<store::KnownGroup> groupsIn(const store::Collection& collection, const std::string& section,
                                        Date day) {
  std::vector<store::KnownGroup> groups;
  for (const store::StoredGroup& group : store::listGroups(collection))
    if (group.record.section == section)
      if (auto known = store::knowGroup(collection, group.record.code, day))
        groups.push_back(std::move(*known));
  std::ranges::stable_sort(groups, animal::goesBefore, [](const store::KnownGroup& known) {
    return std::string_view(known.group.record.name);
  });
  return groups;
}

void addWithoutBowl(const GroupOfDay& group, PrepSheet& sheet) {
  const auto why = group.diets.empty()   ? intake::NoBowl::NoDiet
                   : !group.animals      ? intake::NoBowl::HeadcountUnknown
                   : *group.animals == 0 ? intake::NoBowl::NoAnimals
                                         : intake::NoBowl::NothingPlanned;
  if (why == intake::NoBowl::NoDiet && group.animals == 0) return;  // nobody is there to be fed
  sheet.withoutBowl.push_back({group.code, group.name, why});
}

std::vector<PrepBowl> plannedOn(const store::Collection& collection, const std::string& section, Date day,
                                const std::vector<store::StoredDiet>& diets,
                                const intake::FoodLookup& foodOf) {
  std::vector<PrepBowl> bowls;
  for (const store::KnownGroup& known : groupsIn(collection, section, day))
    for (PrepBowl& bowl : intake::bowlsOf(groupOn(collection, known, diets, day), day, foodOf))
      bowls.push_back(std::move(bowl));
  return bowls;
}

void addTomorrow(const store::Collection& collection, const std::vector<store::StoredDiet>& diets,
                 const intake::FoodLookup& foodOf, PrepSheet& sheet) {
  const Date tomorrow = intake::dayOfNumber(intake::dayNumber(sheet.day) + 1);
  const auto bowls = plannedOn(collection, sheet.section, tomorrow, diets, foodOf);
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
  const auto diets = store::listDiets(collection);
  const auto opened = store::bowlsOfDay(collection, day, section);
  const auto cautions = houseCautions(collection);
  std::vector<animal::FoodCaution> known(animal::knownCautions().begin(), animal::knownCautions().end());
  known.insert(known.end(), cautions.begin(), cautions.end());
  std::set<std::string> told;
  for (const store::KnownGroup& group : groupsIn(collection, section, day)) {
    const GroupOfDay fed = groupOn(collection, group, diets, day);
    std::vector<PrepBowl> bowls = intake::bowlsOf(fed, day, foodOf);
    takeOpened(bowlsOfGroup(opened, fed.code), fed, bowls);
    if (bowls.empty()) addWithoutBowl(fed, sheet);
    addCautions(bowls, group, foodOf, known, told);
    sheet.invented = sheet.invented || group.group.record.invented;
    std::ranges::move(bowls, std::back_inserter(sheet.bowls));
  }
  sheet.cautions.assign(told.begin(), told.end());
  sheet.totals = intake::totalsOf(sheet.bowls, foodOf);
  addTomorrow(collection, diets, foodOf, sheet);
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
