// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/swap_effect.h"

#include "core/diet/supply.h"
#include "core/diet/swap_approval.h"
#include "core/diet/swap_program.h"
#include "core/diet/swap_refusal.h"
#include "core/diet/swap_single.h"

#include <algorithm>
#include <array>
#include <set>

namespace tarebowl::diet {
namespace {

using quantity::Grams;

/// The new bowl beside the approved one, over the same foods.
struct Bowls {
  BalanceProblem problem;
  Diet before;
  Diet after;
  std::vector<std::size_t> parts;  ///< positions of the swap's foods
};

std::size_t placeOf(Bowls& bowls, const DietFood& food) {
  const auto found = std::ranges::find(bowls.problem.foods, food.id, &DietFood::id);
  if (found != bowls.problem.foods.end())
    return static_cast<std::size_t>(found - bowls.problem.foods.begin());
  bowls.problem.foods.push_back(food);
  bowls.before.emplace_back(0.0);
  bowls.after.emplace_back(0.0);
  return bowls.problem.foods.size() - 1;
}

Bowls bowlsOf(const SwapRequest& request, const Swap& swap) {
  Bowls bowls{request.problem, request.approved, request.approved, {}};
  for (const std::size_t food : request.missing) bowls.after[food] = Grams(0);
  for (const MovedLine& line : swap.moved) bowls.after[line.food] = line.grams;
  for (const SwapPart& part : swap.parts) {
    const std::size_t place = placeOf(bowls, request.candidates.at(part.candidate));
    bowls.after[place] += part.grams;
    bowls.parts.push_back(place);
  }
  bowls.problem.reference = bowls.before;
  return bowls;
}

bool holdsUnknown(const Supply& supply, const Eigen::VectorXd& grams) {
  return (!supply.known && grams.array() > 0.0).any();
}

BeforeAfter compared(const Supply& supply, const Eigen::VectorXd& before, const Eigen::VectorXd& after) {
  return {supply.perGram.dot(before), supply.perGram.dot(after), holdsUnknown(supply, before),
          holdsUnknown(supply, after)};
}

std::vector<RungChange> rungsOf(const Bowls& bowls) {
  const Balance before = balance(bowls.problem, bowls.before);
  const Balance after = balance(bowls.problem, bowls.after);
  std::vector<RungChange> rungs;
  for (std::size_t i = 0; i < before.targets.size(); ++i)
    rungs.push_back({before.targets[i], after.targets[i]});
  return rungs;
}

CalciumToPhosphorus calciumToPhosphorusOf(const Bowls& bowls, const Eigen::VectorXd& before,
                                          const Eigen::VectorXd& after,
                                          const std::vector<RungChange>& rungs) {
  const auto calcium = food::nutrients::calcium();
  const auto phosphorus = food::nutrients::phosphorus();
  const BeforeAfter ca = compared(nutrientSupply(bowls.problem, calcium), before, after);
  const BeforeAfter p = compared(nutrientSupply(bowls.problem, phosphorus), before, after);
  CalciumToPhosphorus ratio;
  if (p.before > 0.0) ratio.before = ca.before / p.before;
  if (p.after > 0.0) ratio.after = ca.after / p.after;
  ratio.isKnown = !ca.afterAtLeast && !p.afterAtLeast;
  for (std::size_t i = 0; i < rungs.size(); ++i) {
    if (rungs[i].before.kind != TargetKind::Ratio) continue;
    const animal::RatioTarget& target = bowls.problem.ratios[rungs[i].before.index];
    if (target.of == calcium && target.to == phosphorus && !ratio.rung) ratio.rung = i;
  }
  return ratio;
}

std::vector<food::NutrientId> unknownOf(const Bowls& bowls) {
  std::set<food::NutrientId> named;
  for (const animal::Target& target : bowls.problem.targets) named.insert(target.nutrient);
  for (const animal::RatioTarget& ratio : bowls.problem.ratios) named.insert({ratio.of, ratio.to});
  std::vector<food::NutrientId> unknown;
  for (const food::NutrientId nutrient : named) {
    const Supply supply = nutrientSupply(bowls.problem, nutrient);
    const bool isUnknown = std::ranges::any_of(
        bowls.parts, [&](std::size_t place) { return !supply.known[static_cast<Eigen::Index>(place)]; });
    if (isUnknown) unknown.push_back(nutrient);
  }
  return unknown;
}

void addFoods(SwapEffect& effect, const SwapRequest& request, const Swap& swap, const Bowls& bowls) {
  for (std::size_t i = 0; i < swap.parts.size(); ++i) {
    const DietFood& food = bowls.problem.foods[bowls.parts[i]];
    for (FoodFinding& finding : findingsOn(request.problem, food)) {
      finding.food = swap.parts[i].candidate;
      effect.cautions.push_back(std::move(finding));
    }
    const auto eaten = request.eatenBefore.find(food.id);
    effect.eatenBefore.push_back(eaten == request.eatenBefore.end() ? std::nullopt
                                                                    : std::optional(eaten->second));
  }
}

}  // namespace

SwapEffect effectOf(const SwapRequest& request, const Swap& swap) {
  const Bowls bowls = bowlsOf(request, swap);
  const Eigen::VectorXd before = gramsOf(bowls.problem, bowls.before);
  const Eigen::VectorXd after = gramsOf(bowls.problem, bowls.after);
  SwapEffect effect;
  effect.rungs = rungsOf(bowls);
  effect.energy = compared(nutrientSupply(bowls.problem, food::nutrients::energy()), before, after);
  effect.dryMatter = compared(dryMatterSupply(bowls.problem), before, after);
  effect.calciumToPhosphorus = calciumToPhosphorusOf(bowls, before, after, effect.rungs);
  effect.unknown = unknownOf(bowls);
  addFoods(effect, request, swap, bowls);
  effect.approval = approvalOf(request, swap, effect.rungs, effect.cautions);
  effect.problem = bowls.problem;
  effect.grams = bowls.after;
  return effect;
}

std::optional<Swap> swapOf(const SwapRequest& request, std::size_t candidate, Grams grams) {
  SwapRequest alone{request.problem, request.approved, request.missing, {request.candidates.at(candidate)}};
  const SwapFrame frame(alone);
  const SwapColumns columns(frame);
  if (!(grams > Grams(0)) || refusalOf(frame, columns, 0) ||
      brokenStructure(frame, columns, std::array<std::size_t, 1>{0}))
    return std::nullopt;
  const SwapRange range = rangeOf(frame, columns, 0);
  const double total = range.held + grams.value();
  const double slack = 1e-9 * std::max(1.0, total);
  if (total < range.least - slack || total > range.most + slack) return std::nullopt;
  const SwapStanding standing = SingleSwaps(frame, columns).at(0, total);
  if (standing.hard > kHardSlack) return std::nullopt;
  Swap swap;
  swap.parts = {{candidate, grams}};
  swap.shortfall = standing.shortfall;
  swap.difference = standing.difference;
  swap.isProven = false;
  return swap;
}

}  // namespace tarebowl::diet
