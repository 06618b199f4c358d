// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/verification.h"

#include "core/diet/scale_step.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

constexpr double kAgree = 1e-9;
constexpr double kHardRule = 1e-8;  // relative shortfall of a hard bound that is rounding

bool isFinite(quantity::Grams amount) {
  return std::isfinite(amount.value());
}

bool limitsAreNumbers(const DietFood& food) {
  return isFinite(food.min) && (!food.max || !std::isnan(food.max->value())) && isFinite(food.scaleStep) &&
         std::isfinite(food.eatenFraction) && std::isfinite(food.costPerKg.value_or(0.0));
}

/// A used food weighs more than nothing and at least what the choice asks of each.
std::optional<std::string> brokenChoice(const BalanceProblem& problem, const ChoiceRule& rule,
                                        const Diet& grams) {
  int used = 0;
  for (std::size_t j = 0; j < grams.size(); ++j) {
    if (problem.foods[j].group != rule.group || !(grams[j].value() > kAgree)) continue;
    ++used;
    if (grams[j] < rule.minEach * (1.0 - kAgree))
      return fmt::format("choice: {} in {}", problem.foods[j].id, rule.group);
  }
  // Without whole steps and a least amount a trace counts as used, and no trace can be told from none.
  const bool tracesCount = !problem.wholeSteps && !(rule.minEach.value() > 0.0);
  const bool tooFew = used < rule.atLeast && !tracesCount;
  if (tooFew || (rule.atMost && used > *rule.atMost))
    return fmt::format("choice: {} of {}", used, rule.group);
  return std::nullopt;
}

std::optional<std::string> brokenLimit(const BalanceProblem& problem, const Diet& grams) {
  for (std::size_t j = 0; j < grams.size(); ++j) {
    const DietFood& food = problem.foods[j];
    const double slack = kAgree * std::max(1.0, grams[j].value());
    const bool within = grams[j].value() >= std::max(0.0, food.min.value()) - slack &&
                        (!food.max || grams[j].value() <= food.max->value() + slack);
    if (!within) return fmt::format("limit: {} {}", food.id, grams[j].value());
    if (problem.wholeSteps && nearestOnScale(grams[j], food.scaleStep) != grams[j]) {
      return fmt::format("scale-step: {} {}", food.id, grams[j].value());
    }
  }
  return std::nullopt;
}

}  // namespace

bool agree(double a, double b) {
  return std::abs(a - b) <= kAgree * std::max({1.0, std::abs(a), std::abs(b)});
}

std::vector<std::size_t> foodsWithoutPrice(const BalanceProblem& problem) {
  std::vector<std::size_t> foods;
  if (problem.objective.kind != Objective::Kind::LowestCost) return foods;
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    const DietFood& food = problem.foods[j];
    const bool isFixed = food.max && *food.max <= food.min;
    if (!food.costPerKg && !isFixed) foods.push_back(j);
  }
  return foods;
}

std::optional<std::string> unsolvable(const BalanceProblem& problem) {
  if (problem.foods.empty()) return "no-foods";
  for (const DietFood& food : problem.foods) {
    if (!limitsAreNumbers(food)) return fmt::format("not-a-number: {}", food.id);
  }
  if (problem.reference && problem.reference->size() != problem.foods.size()) return "reference-size";
  // At one half or below scatter would loosen a bound: no cone, and nobody's wish.
  if (problem.confidence && !(*problem.confidence > 0.5 && *problem.confidence < 1.0)) return "confidence";
  const bool wantsNutrient =
      problem.objective.kind == Objective::Kind::Lowest || problem.objective.kind == Objective::Kind::Highest;
  if (wantsNutrient && !problem.objective.nutrient) return "objective-without-nutrient";
  const auto unpriced = foodsWithoutPrice(problem);
  if (!unpriced.empty()) return fmt::format("no-price: {}", problem.foods[unpriced.front()].id);
  return std::nullopt;
}

std::optional<std::string> uncountable(std::span<const Measure> measures) {
  for (const Measure& measure : measures) {
    if (!measure.defect.empty()) return fmt::format("{}: {}", measure.defect, measure.id);
  }
  return std::nullopt;
}

std::optional<std::string> brokenRule(const BalanceProblem& problem, const DietSolution& answer) {
  if (auto broken = brokenLimit(problem, answer.grams)) return broken;
  for (const ChoiceRule& rule : problem.choices) {
    if (auto broken = brokenChoice(problem, rule, answer.grams)) return broken;
  }
  const auto isHard = [&](const TargetBalance& line) {
    switch (line.kind) {
      case TargetKind::Nutrient:
        return problem.targets[line.index].hard;
      case TargetKind::Ratio:
        return problem.ratios[line.index].hard;
      case TargetKind::Share:
        return problem.shares[line.index].hard;
    }
    return false;
  };
  for (const TargetBalance& line : answer.balance.targets) {
    if (isHard(line) && line.shortfall > kHardRule)
      return fmt::format("hard: {} {}", line.id, line.shortfall);
  }
  return std::nullopt;
}

}  // namespace tarebowl::diet
