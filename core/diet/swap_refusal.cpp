// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_refusal.h"

#include "core/diet/food_safety.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

int usedOf(const std::string& group, const BalanceProblem& problem, const Eigen::VectorXd& grams) {
  int used = 0;
  for (std::size_t j = 0; j < problem.foods.size(); ++j)
    if (problem.foods[j].group == group && grams[static_cast<Eigen::Index>(j)] > 0.0) ++used;
  return used;
}

int missedBy(const ChoiceRule& rule, int used) {
  const int over = rule.atMost ? used - *rule.atMost : 0;
  return std::max({0, rule.atLeast - used, over});
}

bool addsToGroup(const SwapFrame& frame, const SwapColumns& columns, std::size_t candidate,
                 const std::string& group) {
  const std::optional<std::size_t> line = columns.ownLine(candidate);
  const bool isUsed = line && frame.rest()[static_cast<Eigen::Index>(*line)] > 0.0;
  return !isUsed && columns.food(candidate).group == group;
}

}  // namespace

std::optional<SwapRefusal> refusalOf(const SwapFrame& frame, const SwapColumns& columns,
                                     std::size_t candidate) {
  const DietFood& food = columns.food(candidate);
  if (bansAnything(frame.problem())) {
    const auto findings = findingsOn(frame.problem(), food);
    const auto ban = std::ranges::find_if(findings, &FoodFinding::forbids);
    if (ban != findings.end()) return SwapRefusal{candidate, SwapRefusal::Why::Banned, ban->ban, ban->reason};
  }
  const bool isOfTheDiet = columns.ownLine(candidate).has_value();
  if (!isOfTheDiet && !food.composition.amountPer100g(food::nutrients::water()))
    return SwapRefusal{candidate, SwapRefusal::Why::NoWater};
  return std::nullopt;
}

std::optional<std::string> brokenStructure(const SwapFrame& frame, const SwapColumns& columns,
                                           std::span<const std::size_t> candidates) {
  for (const ChoiceRule& rule : frame.problem().choices) {
    const int before = usedOf(rule.group, frame.problem(), frame.approved());
    int after = usedOf(rule.group, frame.problem(), frame.rest());
    for (const std::size_t candidate : candidates)
      if (addsToGroup(frame, columns, candidate, rule.group)) ++after;
    if (missedBy(rule, after) > missedBy(rule, before)) return rule.group;
  }
  return std::nullopt;
}

}  // namespace tarebowl::diet
