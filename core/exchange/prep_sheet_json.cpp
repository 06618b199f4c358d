// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/numbers.h"
#include "core/exchange/prep_sheet_page.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

using Json = nlohmann::ordered_json;
using intake::FoodLookup;
using intake::KitchenTotal;

namespace {

/// Sums of grams of several scales are told as finely as the collection keeps them.
constexpr quantity::Grams kMilligram{0.001};

Json itemJson(const intake::BowlItem& item, const FoodLookup& foodOf) {
  const intake::KitchenFood food = foodOf(item.food);
  Json json{{"item", item.item},
            {"food", item.food},
            {"name", food.name},
            {"planned_g", onScale(item.planned, food.step).value()}};
  if (!item.preparation.empty()) json["preparation"] = item.preparation;
  if (item.swappedOut) json["swapped_out"] = true;
  if (!food.inStock) json["in_stock"] = false;
  if (const auto weighed = intake::entryThatCounts(item.weighings)) {
    json["weighed_g"] = weighed->actual.value();
    json["weighed_by"] = weighed->by.who;
    json["weighed_at"] = weighed->by.at;
  }
  return json;
}

Json bowlJson(const intake::PrepBowl& bowl, const FoodLookup& foodOf) {
  const intake::Bowl& sheet = bowl.bowl;
  Json json{{"group", sheet.key.group}, {"bowl", sheet.key.bowl},
            {"label", sheet.label},     {"meal", sheet.meal},
            {"animals", sheet.animals}, {"diet", sheet.diet},
            {"version", sheet.version}, {"total_g", onScale(bowl.total(), kMilligram).value()},
            {"opened", bowl.opened}};
  if (!bowl.purpose.empty()) json["purpose"] = bowl.purpose;
  if (bowl.phaseDay > 0) json["phase_in"] = {{"day", bowl.phaseDay}, {"of", bowl.phaseDays}};
  json["items"] = Json::array();
  for (const intake::BowlItem& item : sheet.items) json["items"].push_back(itemJson(item, foodOf));
  if (bowl.allowances.empty()) return json;
  json["without_weighing"] = Json::array();
  for (const diet::Allowance& allowance : bowl.allowances)
    json["without_weighing"].push_back({{"food", allowance.food},
                                        {"low_g", allowance.low.value()},
                                        {"high_g", allowance.high.value()},
                                        {"purpose", symbolOf(allowance.purpose)},
                                        {"note", allowance.note}});
  return json;
}

Json totalsJson(const std::vector<KitchenTotal>& totals) {
  Json list = Json::array();
  for (const KitchenTotal& total : totals) {
    Json json{{"food", total.food.code},
              {"name", total.food.name},
              {"g", onScale(total.amount, kMilligram).value()},
              {"bowls", total.bowls}};
    if (intake::isCooked(total.food)) {
      json["raw"] = total.food.raw.empty() ? Json(nullptr) : Json(total.food.raw);
      json["raw_g"] = total.raw ? Json(total.raw->value()) : Json(nullptr);
    }
    if (total.bought) json["bought_g"] = total.bought->value();
    list.push_back(std::move(json));
  }
  return list;
}

}  // namespace

std::string prepSheetAsJson(const intake::PrepSheet& sheet, const FoodLookup& foodOf) {
  Json json{{"format", "tarebowl-prep/1"}, {"section", sheet.section}, {"day", quantity::isoDate(sheet.day)}};
  if (sheet.invented) json["invented"] = true;
  json["bowls"] = Json::array();
  for (const intake::PrepBowl& bowl : sheet.bowls) json["bowls"].push_back(bowlJson(bowl, foodOf));
  json["totals"] = totalsJson(sheet.totals);
  json["thaw_for_tomorrow"] = totalsJson(sheet.thawForTomorrow);
  json["gut_load_for_tomorrow"] = totalsJson(sheet.gutLoadForTomorrow);
  json["without_bowl"] = Json::array();
  for (const intake::GroupWithoutBowl& group : sheet.withoutBowl)
    json["without_bowl"].push_back({{"group", group.group}, {"why", reasonText(group.why)}});
  json["cautions"] = sheet.cautions;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
}

}  // namespace tarebowl::exchange
