// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/kitchen_sheet.h"

#include "core/store/feeding_reading.h"
#include "core/store/reading.h"

#include <algorithm>

namespace tarebowl::ui {
namespace {

void addFoods(const intake::FoodLookup& foodOf, KitchenSheet& made) {
  for (const intake::PrepBowl& bowl : made.sheet.bowls) {
    for (const intake::BowlItem& item : bowl.bowl.items) made.foods.emplace(item.food, foodOf(item.food));
    for (const diet::Allowance& given : bowl.allowances) made.foods.emplace(given.food, foodOf(given.food));
  }
}

}  // namespace

intake::KitchenFood KitchenSheet::foodOf(const std::string& code) const {
  const auto known = foods.find(code);
  return known != foods.end() ? known->second
                              : intake::KitchenFood{.code = code, .name = code, .known = false};
}

std::optional<store::StoredLot> KitchenSheet::lotOf(const std::string& food) const {
  const auto lot = intake::lotOn(store::lotsOf(lots), food, sheet.day);
  const auto found =
      std::ranges::find_if(lots, [&](const store::StoredLot& stored) { return stored.record == lot; });
  return found == lots.end() ? std::nullopt : std::optional(*found);
}

transfer::JudgedBy KitchenSheet::judgedBy() const {
  return {rule, [this](const std::string& code) { return foodOf(code); }};
}

KitchenSheet readKitchenSheet(const store::Collection& collection, const std::string& section,
                              quantity::Date day) {
  store::askAhead(
      collection, [&] { return transfer::sectionsOf(collection); },
      [&] { return store::toleranceRule(collection); },
      [&] { return transfer::readPrepSheet(collection, section, day); },
      [&] { return store::listLots(collection); }, [&] { return store::swapsBetween(collection, day, day); },
      [&] { return store::controlPansBetween(collection, day, day); });
  KitchenSheet made{.sections = transfer::sectionsOf(collection)};
  made.rule = store::toleranceRule(collection);
  const bool isThere = std::ranges::find(made.sections, section) != made.sections.end();
  const std::string first = made.sections.empty() ? std::string() : made.sections.front();
  made.sheet = transfer::readPrepSheet(collection, isThere ? section : first, day);
  made.lots = store::listLots(collection);
  made.swaps = store::swapsBetween(collection, day, day);
  for (store::StoredControlPan& pan : store::controlPansBetween(collection, day, day))
    if (pan.record.place == made.sheet.section) made.pans.push_back(std::move(pan));
  addFoods(transfer::kitchenFoods(collection), made);
  return made;
}

std::vector<SheetLine> linesToWeigh(const intake::PrepSheet& sheet) {
  std::vector<SheetLine> lines;
  for (std::size_t bowl = 0; bowl < sheet.bowls.size(); ++bowl)
    for (std::size_t item = 0; item < sheet.bowls[bowl].bowl.items.size(); ++item)
      if (!sheet.bowls[bowl].bowl.items[item].swappedOut) lines.push_back({bowl, item});
  return lines;
}

bool isWeighed(const intake::BowlItem& item) {
  return intake::entryThatCounts(item.weighings).has_value();
}

WeighedSoFar weighedSoFar(const intake::PrepBowl& bowl) {
  WeighedSoFar so;
  for (const intake::BowlItem& item : bowl.bowl.items) {
    if (item.swappedOut) continue;
    ++so.lines;
    so.weighed += isWeighed(item) ? 1 : 0;
  }
  return so;
}

}  // namespace tarebowl::ui
