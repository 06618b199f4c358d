// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/swap_json.h"

#include "core/animal/animal_words.h"
#include "core/diet/swap_effect.h"
#include "core/exchange/numbers.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <string_view>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using diet::SwapEffect;
using diet::SwapRequest;

Json beforeAfterToJson(const diet::BeforeAfter& amount) {
  Json json{{"before", toJson(amount.before)}, {"after", toJson(amount.after)}};
  if (amount.beforeAtLeast) json["before_at_least"] = true;
  if (amount.afterAtLeast) json["after_at_least"] = true;
  return json;
}

Json gramsToJson(const std::optional<quantity::Grams>& grams) {
  return grams ? toJson(grams->value()) : Json(nullptr);
}

Json partToJson(const SwapRequest& request, const diet::SwapPart& part,
                const std::optional<diet::EatenBefore>& eaten) {
  const diet::DietFood& food = request.candidates[part.candidate];
  const diet::EqualAmounts equal = diet::equalAmounts(request, part.candidate);
  Json json{{"food", food.id},
            {"name", food.name},
            {"grams", toJson(onScale(part.grams, food.scaleStep).value())},
            {"eaten_fraction", toJson(food.eatenFraction)},
            {"grams_of_equal_dry_matter", gramsToJson(equal.dryMatter)},
            {"grams_of_equal_energy", gramsToJson(equal.energy)}};
  json["eaten_before"] =
      eaten ? Json{{"fraction", toJson(eaten->fraction)}, {"bowls", eaten->bowls}} : Json(nullptr);
  return json;
}

Json standingToJson(const diet::TargetBalance& line) {
  return {{"value", toJson(line.value)}, {"state", diet::symbolOf(line.state)}, {"at_least", line.atLeast}};
}

Json rungsToJson(const SwapEffect& effect) {
  Json rungs = Json::array();
  for (const diet::RungChange& rung : effect.rungs)
    if (rung.changesState())
      rungs.push_back({{"id", rung.before.id},
                       {"before", standingToJson(rung.before)},
                       {"after", standingToJson(rung.after)}});
  return rungs;
}

Json calciumToPhosphorusToJson(const SwapEffect& effect) {
  const diet::CalciumToPhosphorus& ratio = effect.calciumToPhosphorus;
  Json json{{"before", toJson(ratio.before)}, {"after", toJson(ratio.after)}, {"known", ratio.isKnown}};
  if (ratio.rung) json["state"] = diet::symbolOf(effect.rungs[*ratio.rung].after.state);
  return json;
}

Json cautionsToJson(const SwapRequest& request, const SwapEffect& effect) {
  Json cautions = Json::array();
  for (const diet::FoodFinding& finding : effect.cautions) {
    Json entry{{"food", request.candidates[finding.food].id},
               {"id", finding.ban},
               {"severity", animal::symbolOf(finding.severity)},
               {"reason", finding.reason}};
    if (!finding.advice.empty()) entry["advice"] = finding.advice;
    if (!finding.inForce) entry["animal_not_known"] = true;
    if (!finding.lifted.empty()) entry["lifted"] = finding.lifted;
    cautions.push_back(std::move(entry));
  }
  return cautions;
}

Json approvalToJson(const SwapEffect& effect) {
  const diet::SwapApproval& approval = effect.approval;
  const auto ids = [&](const std::vector<std::size_t>& rungs) {
    Json list = Json::array();
    for (const std::size_t rung : rungs) list.push_back(effect.rungs[rung].before.id);
    return list;
  };
  return {{"by", approval.keeperMay() ? "keeper" : "nutritionist"},
          {"same_group", approval.isSameGroup},
          {"no_longer_met", ids(approval.lost)},
          {"may_not_be_met", ids(approval.doubtful)},
          {"cautioned", approval.isCautioned}};
}

Json swapToJson(const SwapRequest& request, const diet::Swap& swap) {
  const SwapEffect effect = diet::effectOf(request, swap);
  Json json{{"foods", Json::array()}};
  for (std::size_t i = 0; i < swap.parts.size(); ++i)
    json["foods"].push_back(partToJson(request, swap.parts[i], effect.eatenBefore[i]));
  if (!swap.moved.empty()) {
    json["moved"] = Json::object();
    for (const diet::MovedLine& line : swap.moved)
      json["moved"][request.problem.foods[line.food].id] = toJson(line.grams.value());
  }
  json["shortfall"] = toJson(swap.shortfall);
  json["difference"] = toJson(swap.difference);
  json["proven"] = swap.isProven;
  json["changes"] = rungsToJson(effect);
  json["energy_kcal"] = beforeAfterToJson(effect.energy);
  json["dry_matter_g"] = beforeAfterToJson(effect.dryMatter);
  json["calcium_to_phosphorus"] = calciumToPhosphorusToJson(effect);
  json["unknown"] = Json::array();
  for (const food::NutrientId nutrient : effect.unknown)
    json["unknown"].push_back(food::describe(nutrient).tagname);
  json["cautions"] = cautionsToJson(request, effect);
  json["approval"] = approvalToJson(effect);
  return json;
}

std::string_view wordOf(diet::SwapRefusal::Why why) {
  using Why = diet::SwapRefusal::Why;
  switch (why) {
    case Why::Banned:
      return "not-for-this-animal";
    case Why::Structure:
      return "structure-rule";
    case Why::NoAmount:
      return "no-amount";
    case Why::HardRule:
      return "hard-rule";
    case Why::NoWater:
      break;
  }
  return "water-unknown";
}

Json refusalToJson(const SwapRequest& request, const diet::SwapRefusal& refusal) {
  Json json{{"food", request.candidates[refusal.candidate].id}, {"why", wordOf(refusal.why)}};
  if (!refusal.rule.empty()) json["rule"] = refusal.rule;
  if (!refusal.reason.empty()) json["reason"] = refusal.reason;
  return json;
}

}  // namespace

std::string writeSwaps(const SwapRequest& request, const diet::SwapRanking& ranking, std::size_t most) {
  Json json{{"format", "tarebowl-swap/1"}, {"title", request.problem.title}};
  if (request.problem.invented) json["invented"] = true;
  json["without"] = Json::array();
  for (const std::size_t food : request.missing)
    json["without"].push_back({{"food", request.problem.foods[food].id},
                               {"name", request.problem.foods[food].name},
                               {"grams", toJson(request.approved[food].value())}});
  json["others_may_move"] = toJson(request.move);
  json["candidates"] = request.candidates.size();
  json["swaps"] = Json::array();
  for (std::size_t i = 0; i < std::min(most, ranking.singles.size()); ++i)
    json["swaps"].push_back(swapToJson(request, ranking.singles[i]));
  json["pairs"] = Json::array();
  for (const diet::Swap& pair : ranking.pairs) json["pairs"].push_back(swapToJson(request, pair));
  json["refused"] = Json::array();
  for (const diet::SwapRefusal& refusal : ranking.refused)
    json["refused"].push_back(refusalToJson(request, refusal));
  json["complete"] = ranking.isComplete;
  return toText(json);
}

}  // namespace tarebowl::exchange
