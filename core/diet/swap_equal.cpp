// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/scale_step.h"
#include "core/diet/supply.h"
#include "core/diet/swap_effect.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

/// Grams of the candidate that bring as much as what is missing does; both as eaten.
std::optional<quantity::Grams> equalOf(const Supply& lines, const Supply& candidate,
                                       const SwapRequest& request, quantity::Grams step) {
  if (!candidate.known[0] || !(candidate.perGram[0] > 0.0)) return std::nullopt;
  double brought = 0.0;
  for (const std::size_t food : request.missing) {
    const auto j = static_cast<Eigen::Index>(food);
    if (!lines.known[j]) return std::nullopt;
    brought += lines.perGram[j] * request.approved[food].value();
  }
  if (!(brought > 0.0)) return std::nullopt;
  return nearestOnScale(quantity::Grams(brought / candidate.perGram[0]), step);
}

/// The diet's own line of it, where there is one.
const DietFood& foodOf(const SwapRequest& request, std::size_t candidate) {
  const DietFood& food = request.candidates.at(candidate);
  const auto line = std::ranges::find(request.problem.foods, food.id, &DietFood::id);
  return line == request.problem.foods.end() ? food : *line;
}

}  // namespace

EqualAmounts equalAmounts(const SwapRequest& request, std::size_t candidate) {
  const DietFood& food = foodOf(request, candidate);
  const FoodList one({&food, 1}, request.problem.energyMethod);
  const FoodList lines(request.problem);
  return {equalOf(dryMatterSupply(lines), dryMatterSupply(one), request, food.scaleStep),
          equalOf(nutrientSupply(lines, food::nutrients::energy()),
                  nutrientSupply(one, food::nutrients::energy()), request, food.scaleStep)};
}

}  // namespace tarebowl::diet
