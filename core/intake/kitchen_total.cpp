// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/prep_sheet.h"

#include <algorithm>
#include <array>
#include <map>
#include <string_view>

namespace tarebowl::intake {

using quantity::Grams;

namespace {

void addPreparation(KitchenTotal& total, const std::string& preparation) {
  if (preparation.empty() || total.preparations.find(preparation) != std::string::npos) return;
  total.preparations += (total.preparations.empty() ? "" : "; ") + preparation;
}

/// What is to be cooked, and what is to be bought of it.
void workBack(KitchenTotal& total) {
  const KitchenFood& food = total.food;
  const bool cooked = isCooked(food);
  if (!food.raw.empty() && food.yield) total.raw = total.amount / *food.yield;
  const std::optional<Grams> before = cooked ? total.raw : std::optional(total.amount);
  const double edible = cooked ? food.rawEdibleFraction : food.edibleFraction;
  if (before && edible < 1.0) total.bought = *before / edible;
}

}  // namespace

bool isThawed(const KitchenFood& food) {
  return food.form == "frozen" || food.form.find("thaw") != std::string::npos;
}

bool isLive(const KitchenFood& food) {
  return food.form == "live";
}

bool isCooked(const KitchenFood& food) {
  constexpr std::array<std::string_view, 4> kForms{"steamed", "boiled", "baked", "cooked"};
  return !food.raw.empty() || std::ranges::any_of(kForms, [&](std::string_view form) {
    return food.form.find(form) != std::string::npos;
  });
}

std::vector<KitchenTotal> totalsOf(std::span<const PrepBowl> bowls, const FoodLookup& foodOf) {
  std::map<std::string, KitchenTotal> byFood;
  for (const PrepBowl& bowl : bowls) {
    for (const BowlItem& item : bowl.bowl.items) {
      if (item.swappedOut) continue;
      const auto [place, isNew] = byFood.try_emplace(item.food);
      KitchenTotal& total = place->second;
      if (isNew) total.food = foodOf(item.food);
      total.amount += item.planned;
      ++total.bowls;
      addPreparation(total, item.preparation);
    }
  }
  std::vector<KitchenTotal> totals;
  for (auto& [code, total] : byFood) {
    workBack(total);
    totals.push_back(std::move(total));
  }
  std::ranges::sort(totals, {},
                    [](const KitchenTotal& total) { return std::pair(total.food.group, total.food.name); });
  return totals;
}

}  // namespace tarebowl::intake
