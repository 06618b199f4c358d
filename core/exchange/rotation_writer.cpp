// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/diet_words.h"
#include "core/diet/rotation_purchase.h"
#include "core/exchange/numbers.h"
#include "core/exchange/rotation_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using diet::RotationPlan;
using diet::RotationProblem;

Json reached(const diet::Reached& reached) {
  return {{"value", toJson(reached.value)}, {"bound", toJson(reached.bound)}, {"gap", toJson(reached.gap())}};
}

Json gramsOf(const RotationProblem& problem, const diet::Diet& day) {
  Json grams = Json::object();
  for (std::size_t j = 0; j < day.size(); ++j)
    if (day[j].value() > 0.0)
      grams[problem.base.foods[j].id] = toJson(onScale(day[j], problem.base.foods[j].scaleStep).value());
  return grams;
}

Json line(const diet::TargetBalance& line) {
  return {{"id", line.id},
          {"value", toJson(line.value)},
          {"min", toJson(line.min)},
          {"max", toJson(line.max)},
          {"state", symbolOf(line.state)},
          {"at_least", line.atLeast},
          {"shortfall", toJson(line.shortfall)},
          {"coverage", toJson(line.coverage)}};
}

Json ladder(const diet::Balance& balance) {
  Json lines = Json::array();
  for (const diet::TargetBalance& target : balance.targets) lines.push_back(line(target));
  return lines;
}

Json daysOf(const RotationProblem& problem, const RotationPlan& plan, std::optional<quantity::Date> from) {
  Json days = Json::array();
  for (std::size_t d = 0; d < plan.days.size(); ++d) {
    const int day = static_cast<int>(d);
    Json json{{"day", day + 1}};
    if (from) json["date"] = quantity::isoDate(dateOfDay(*from, day));
    const auto fed = std::ranges::find(problem.rules.fed, day, &diet::FedDay::day);
    json["over"] = fed != problem.rules.fed.end();
    json["grams"] = gramsOf(problem, plan.days[d]);
    if (fed != problem.rules.fed.end() && fed->eaten) json["eaten"] = gramsOf(problem, *fed->eaten);
    json["targets"] = ladder(plan.dayBalances[d]);
    days.push_back(std::move(json));
  }
  return days;
}

Json purchase(const RotationProblem& problem, const RotationPlan& plan) {
  Json lines = Json::array();
  for (const diet::PurchaseLine& line : diet::purchaseList(problem, plan.days)) {
    const diet::DietFood& food = problem.base.foods[line.food];
    lines.push_back({{"week", line.week + 1},
                     {"group", food.group},
                     {"food", food.id},
                     {"offered_kg", toJson(line.offered.value())},
                     {"bought_kg", toJson(line.bought.value())},
                     {"loss_known", line.lossIsKnown}});
  }
  return lines;
}

Json purchaseGroups(const RotationProblem& problem, const RotationPlan& plan) {
  Json groups = Json::array();
  for (const diet::PurchaseOfGroup& group : diet::byGroup(problem, diet::purchaseList(problem, plan.days)))
    groups.push_back({{"week", group.week + 1},
                      {"group", group.group},
                      {"offered_kg", toJson(group.offered.value())},
                      {"bought_kg", toJson(group.bought.value())},
                      {"loss_known", group.lossIsKnown}});
  return groups;
}

}  // namespace

std::string writeRotation(const RotationProblem& problem, const RotationPlan& plan,
                          std::optional<quantity::Date> from) {
  Json json{{"format", kRotationFormat}, {"status", symbolOf(plan.status)}};
  if (!plan.reason.empty()) json["reason"] = plan.reason;
  if (problem.base.invented) json["invented"] = true;
  if (!plan.days.empty()) {
    json["period"] = reached(plan.period);
    json["daily"] = reached(plan.daily);
    json["wishes"] = reached(plan.wishes);
    json["objective"] = reached(plan.objective);
    json["objective"]["kind"] = animal::symbolOf(problem.base.objective.kind);
    json["targets"] = ladder(plan.periodBalance);
  }
  json["days"] = daysOf(problem, plan, from);
  json["purchase"] = purchase(problem, plan);
  json["purchase_groups"] = purchaseGroups(problem, plan);
  json["nodes"] = plan.nodes;
  json["first_plan_us"] = plan.firstPlan.count();
  json["solve_us"] = plan.time.count();
  return toText(json);
}

}  // namespace tarebowl::exchange
