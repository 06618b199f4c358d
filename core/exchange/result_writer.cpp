// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/explanation_json.h"
#include "core/exchange/numbers.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/safety_json.h"

#include <nlohmann/json.hpp>

namespace tarebowl::exchange {

namespace {

using Json = nlohmann::ordered_json;
using diet::BalanceProblem;
using diet::DietSolution;
using diet::TargetBalance;
using diet::TargetKind;

bool hasDiet(const DietSolution& solution) {
  return !solution.grams.empty();
}

Json writeGrams(const BalanceProblem& problem, const diet::Diet& diet) {
  Json grams = Json::object();
  for (std::size_t i = 0; i < diet.size(); ++i) {
    const diet::DietFood& food = problem.foods[i];
    const quantity::Grams amount = problem.wholeSteps ? onScale(diet[i], food.scaleStep) : diet[i];
    grams[food.id] = toJson(amount.value());
  }
  return grams;
}

/// Only targets have a unit; targets and shares have a basis.
Json unitOf(const BalanceProblem& problem, const TargetBalance& line) {
  if (line.kind != TargetKind::Nutrient) return nullptr;
  return quantity::symbolOf(problem.targets.at(line.index).unit);
}

Json basisOf(const BalanceProblem& problem, const TargetBalance& line) {
  if (line.kind == TargetKind::Ratio) return nullptr;
  const bool isShare = line.kind == TargetKind::Share;
  return quantity::symbolOf(isShare ? problem.shares.at(line.index).basis
                                    : problem.targets.at(line.index).basis);
}

Json writeLine(const BalanceProblem& problem, const TargetBalance& line, double multiplier) {
  Json json = Json::object();
  json["id"] = line.id;
  json["value"] = toJson(line.value);
  json["min"] = toJson(line.min);
  json["max"] = toJson(line.max);
  json["unit"] = unitOf(problem, line);
  json["basis"] = basisOf(problem, line);
  json["state"] = symbolOf(line.state);
  json["at_least"] = line.atLeast;
  json["shortfall"] = toJson(line.shortfall);
  json["coverage"] = toJson(line.coverage);
  json["sd"] = toJson(line.sd);
  json["chance"] = toJson(line.chance);
  json["multiplier"] = toJson(multiplier);
  return json;
}

Json writeLines(const BalanceProblem& problem, const DietSolution& solution) {
  Json lines = Json::array();
  const auto& targets = solution.balance.targets;
  for (std::size_t i = 0; i < targets.size(); ++i) {
    lines.push_back(
        writeLine(problem, targets[i], i < solution.multipliers.size() ? solution.multipliers[i] : 0.0));
  }
  return lines;
}

}  // namespace

std::string writeResult(const BalanceProblem& problem, const DietSolution& solution, const Reasons& reasons) {
  Json json{{"format", kResultFormat}, {"status", symbolOf(solution.status)}};
  if (!solution.reason.empty()) json["reason"] = solution.reason;
  json["grams"] = writeGrams(problem, solution.grams);
  json["shortfall"] = hasDiet(solution) ? toJson(solution.shortfall) : Json(nullptr);
  json["objective"] = hasDiet(solution) ? toJson(solution.objective) : Json(nullptr);
  json["proven_gap"] = toJson(solution.provenGap);
  json["targets"] = writeLines(problem, solution);
  json["conflict"] = solution.conflict;
  if (Json cautions = findingsToJson(problem, solution.grams); !cautions.empty())
    json["cautions"] = std::move(cautions);
  if (!solution.conflictIsSmallest) json["conflict_is_smallest"] = false;
  if (solution.conflictOnlyOnGrid) json["conflict_only_on_grid"] = true;
  json["remedies"] = remediesToJson(problem, reasons.remedies, reasons.larder);
  if (reasons.explanation != nullptr) json["explain"] = explanationToJson(problem, *reasons.explanation);
  json["solve_us"] = solution.solveTime.count();
  return toText(json);
}

}  // namespace tarebowl::exchange
