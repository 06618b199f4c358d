// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/nutrients_json.h"

#include "core/exchange/numbers.h"
#include "core/food/nutrient.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

std::string writeNutrients() {
  using Json = nlohmann::ordered_json;
  Json list = Json::array();
  for (const food::Nutrient& nutrient : food::allNutrients()) {
    Json entry{{"tagname", nutrient.tagname}, {"name", nutrient.name}};
    entry["unit"] = quantity::symbolOf(nutrient.unit);
    entry["group"] = food::symbolOf(nutrient.group);
    entry["decimals"] = nutrient.decimals;
    entry["other_tagnames"] = nutrient.otherTagnames;
    entry["synonyms"] = nutrient.synonyms;
    list.push_back(std::move(entry));
  }
  Json document{{"format", "tarebowl-nutrients/1"}};
  document["nutrients"] = std::move(list);
  return toText(document);
}

}  // namespace tarebowl::exchange
