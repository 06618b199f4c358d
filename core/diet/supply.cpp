// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/supply.h"

#include <algorithm>
#include <stdexcept>

namespace tarebowl::diet {
namespace {

struct Content {
  double per100g = 0.0;
  double sdPer100g = 0.0;
};

template <class ContentOf>
Supply supplyFrom(const FoodList& list, ContentOf contentOf) {
  const auto count = static_cast<Eigen::Index>(list.foods.size());
  Supply supply{Eigen::VectorXd::Zero(count), Eigen::VectorXd::Zero(count),
                KnownMask::Constant(count, false)};
  for (Eigen::Index j = 0; j < count; ++j) {
    const DietFood& food = list.foods[static_cast<std::size_t>(j)];
    const std::optional<Content> content = contentOf(food.composition);
    if (!content) continue;
    supply.perGram[j] = food.eatenFraction * content->per100g / 100.0;
    supply.sdPerGram[j] = food.eatenFraction * content->sdPer100g / 100.0;
    supply.known[j] = true;
  }
  return supply;
}

}  // namespace

Supply massSupply(const FoodList& list) {
  return supplyFrom(list, [](const food::Composition&) { return std::optional(Content{100.0, 0.0}); });
}

Supply dryMatterSupply(const FoodList& list) {
  return supplyFrom(list, [](const food::Composition& composition) -> std::optional<Content> {
    const std::optional<double> water = composition.amountPer100g(food::nutrients::water());
    if (!water) return std::nullopt;
    return Content{std::max(0.0, 100.0 - *water), 0.0};
  });
}

Supply nutrientSupply(const FoodList& list, food::NutrientId nutrient) {
  const bool isEnergy = nutrient == food::nutrients::energy();
  return supplyFrom(list, [&](const food::Composition& composition) -> std::optional<Content> {
    const double sd = composition.sdPer100g(nutrient).value_or(0.0);
    if (isEnergy) {
      const auto energy = food::estimateEnergy(list.energyMethod, composition).per100g;
      return energy ? std::optional(Content{energy->value(), sd}) : std::nullopt;
    }
    const std::optional<double> amount = composition.amountPer100g(nutrient);
    return amount ? std::optional(Content{*amount, sd}) : std::nullopt;
  });
}

Eigen::VectorXd gramsOf(const BalanceProblem& problem, const Diet& diet) {
  if (diet.size() != problem.foods.size()) throw std::invalid_argument("a diet has one entry per food");
  Eigen::VectorXd grams(static_cast<Eigen::Index>(diet.size()));
  for (std::size_t j = 0; j < diet.size(); ++j) grams[static_cast<Eigen::Index>(j)] = diet[j].value();
  return grams;
}

}  // namespace tarebowl::diet
