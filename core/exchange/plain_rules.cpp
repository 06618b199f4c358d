// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plain_rules.h"

#include "core/exchange/numbers.h"
#include "core/exchange/rotation_json.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

std::string writeRotationRules(const PlainRules& rules) {
  using Json = nlohmann::ordered_json;
  Json json{{"format", kRotationRulesFormat}, {"days", rules.days}};
  json["daily_zones"] = {{"widen", toJson(rules.widenDaily)}};
  if (rules.longestRun) json["often"] = Json::array({Json{{"longest_run", *rules.longestRun}}});
  if (rules.wanted) json["variety"] = Json::array({Json{{"wanted", *rules.wanted}}});
  if (rules.mostFoods) json["kitchen"] = {{"most_foods", *rules.mostFoods}};
  if (!rules.fasting.empty()) json["off"] = Json::array({Json{{"days", rules.fasting}}});
  return toText(json);
}

}  // namespace tarebowl::exchange
