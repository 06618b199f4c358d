// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/explanation_json.h"

#include "core/diet/balance.h"
#include "core/exchange/numbers.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using diet::BalanceProblem;
using diet::BoundSide;
using diet::Explanation;

std::string_view wordOf(BoundSide side) {
  return side == BoundSide::Min ? "min" : "max";
}

/// Targets, then ratios, then shares: the order of Balance::targets.
const std::string& idOf(const BalanceProblem& problem, std::size_t line) {
  if (line < problem.targets.size()) return problem.targets[line].id;
  line -= problem.targets.size();
  if (line < problem.ratios.size()) return problem.ratios[line].id;
  return problem.shares.at(line - problem.ratios.size()).id;
}

Json rangeToJson(const diet::Range& range) {
  return {{"low", toJson(range.low)}, {"high", toJson(range.high)}};
}

Json boundsToJson(const BalanceProblem& problem, const Explanation& explanation) {
  Json bounds = Json::array();
  for (const diet::BindingBound& binding : explanation.bounds) {
    Json entry{{"id", idOf(problem, binding.line)},
               {"at", wordOf(binding.side)},
               {"bound", toJson(binding.bound)},
               {"per_unit", toJson(binding.perUnit)}};
    if (!binding.moves.empty()) {
      Json moves = Json::object();
      for (const diet::Move& move : binding.moves)
        moves[problem.foods[move.food].id] = toJson(move.gramsPerUnit);
      entry["grams_per_unit"] = std::move(moves);
    }
    bounds.push_back(std::move(entry));
  }
  return bounds;
}

Json foodsToJson(const BalanceProblem& problem, const Explanation& explanation) {
  Json foods = Json::array();
  for (const diet::BindingFood& binding : explanation.foods) {
    foods.push_back({{"id", problem.foods[binding.food].id},
                     {"at", wordOf(binding.side)},
                     {"grams", toJson(binding.limit.value())},
                     {"per_gram", toJson(binding.perGram)}});
  }
  return foods;
}

Json rangesToJson(const BalanceProblem& problem, const Explanation& explanation) {
  Json ranges = Json::array();
  for (const diet::BindingBound& binding : explanation.bounds) {
    if (!binding.range) continue;
    Json entry{{"id", idOf(problem, binding.line)}, {"bound", wordOf(binding.side)}};
    entry.update(rangeToJson(*binding.range));
    ranges.push_back(std::move(entry));
  }
  for (const diet::CostRange& cost : explanation.costs) {
    Json entry{{"food", problem.foods[cost.food].id}, {"cost_per_kg", toJson(cost.costPerKg)}};
    entry.update(rangeToJson(cost.range));
    ranges.push_back(std::move(entry));
  }
  return ranges;
}

Json leastChangesToJson(const Explanation& explanation) {
  Json changes = Json::array();
  for (const diet::LeastChange& change : explanation.leastChanges) {
    changes.push_back({{"id", change.id},
                       {"bound", wordOf(change.side)},
                       {"from", toJson(change.from)},
                       {"to", toJson(change.to)},
                       {"resolves", change.resolvesAll ? "all" : "conflict"},
                       {"whole_steps", change.onGrid}});
  }
  return changes;
}

}  // namespace

Json explanationToJson(const BalanceProblem& problem, const Explanation& explanation) {
  return {{"rates_of", explanation.ofShortfall ? "shortfall" : "objective"},
          {"any_amounts", explanation.ofAnyAmounts},
          {"binding",
           {{"targets", boundsToJson(problem, explanation)}, {"foods", foodsToJson(problem, explanation)}}},
          {"ranges", rangesToJson(problem, explanation)},
          {"least_changes", leastChangesToJson(explanation)}};
}

Json remediesToJson(const BalanceProblem& problem, std::span<const diet::Remedy> remedies,
                    std::span<const diet::DietFood> larder) {
  using Kind = diet::Remedy::Kind;
  Json list = Json::array();
  for (const diet::Remedy& remedy : remedies) {
    const diet::DietFood& food =
        remedy.kind == Kind::Raise ? problem.foods[remedy.food] : larder[remedy.food];
    Json entry{
        {"food", food.id}, {"grams", toJson(remedy.grams.value())}, {"shortfall", toJson(remedy.shortfall)}};
    if (!remedy.possible) entry["still_impossible"] = true;
    if (remedy.kind == Kind::Replace) entry["in_place_of"] = problem.foods[remedy.inPlaceOf].id;
    if (remedy.kind == Kind::Raise && food.max) entry["instead_of_max_g"] = toJson(food.max->value());
    if (remedy.kind != Kind::Raise) entry["known"] = toJson(remedy.known);
    if (remedy.provenGap > 0.0) entry["proven_gap"] = toJson(remedy.provenGap);
    list.push_back(std::move(entry));
  }
  return list;
}

}  // namespace tarebowl::exchange
