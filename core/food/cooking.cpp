// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/food/cooking.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace tarebowl::food {

namespace {

using quantity::AsFedContent;

constexpr double kMostRetention = 2.0;
constexpr double kRoundingGrams = 1e-9;

double factorOf(const Cooking& cooking, NutrientId nutrient) {
  const auto place = std::ranges::find(cooking.retentions, nutrient, &Retention::nutrient);
  return place == cooking.retentions.end() ? 1.0 : place->factor;
}

bool hasFactor(const Cooking& cooking, NutrientId nutrient) {
  return std::ranges::find(cooking.retentions, nutrient, &Retention::nutrient) != cooking.retentions.end();
}

/// Grams of dry matter in 100 g raw that stay in the food.
double keptDryMatter(const Composition& raw, const Cooking& cooking, double water) {
  using namespace nutrients;
  double kept = 100.0 - water;
  for (const NutrientId part : {protein(), fat(), carbohydrateByDifference(), ash()})
    kept -= (1.0 - factorOf(cooking, part)) * raw.amountPer100g(part).value_or(0.0);
  return std::max(kept, 0.0);
}

double energyFactor(const Composition& raw, const Cooking& cooking) {
  using namespace nutrients;
  if (hasFactor(cooking, energy())) return factorOf(cooking, energy());
  const std::array<std::pair<NutrientId, double>, 3> kilocalories{
      {{protein(), 4.0}, {fat(), 9.0}, {carbohydrateByDifference(), 4.0}}};
  double before = 0.0;
  double after = 0.0;
  for (const auto& [part, perGram] : kilocalories) {
    const double energyOfPart = perGram * raw.amountPer100g(part).value_or(0.0);
    before += energyOfPart;
    after += energyOfPart * factorOf(cooking, part);
  }
  return before > 0.0 ? after / before : 1.0;
}

NutrientValue cooked(NutrientValue value, double factor, const Cooking& cooking) {
  value.amount = value.amount * factor;
  if (value.sd) value.sd = *value.sd * factor;
  const std::string origin = value.source.empty() ? "" : fmt::format(" of {}", value.source);
  value.source = fmt::format("worked out from {} by yield and retention{}", cooking.rawCode, origin);
  return value;
}

}  // namespace

std::optional<CookingProblem> problemWith(const Cooking& cooking) {
  if (!std::isfinite(cooking.massYield) || cooking.massYield <= 0.0) return CookingProblem::YieldNotAboveZero;
  const bool factors = std::ranges::all_of(cooking.retentions, [](const Retention& retention) {
    return std::isfinite(retention.factor) && retention.factor >= 0.0 && retention.factor <= kMostRetention;
  });
  return factors ? std::nullopt : std::optional(CookingProblem::FactorOutOfRange);
}

std::variant<Composition, CookingProblem> cook(const Composition& raw, const Cooking& cooking) {
  if (const auto problem = problemWith(cooking)) return *problem;
  Composition result;
  for (const NutrientId nutrient : raw.knownNutrients()) {
    if (nutrient == nutrients::water()) continue;
    const bool isEnergy = nutrient == nutrients::energy();
    const double kept = isEnergy ? energyFactor(raw, cooking) : factorOf(cooking, nutrient);
    result.set(nutrient, cooked(*raw.find(nutrient), kept / cooking.massYield, cooking));
  }
  const NutrientValue* water = raw.find(nutrients::water());
  if (water == nullptr) return result;
  const double left = 100.0 - keptDryMatter(raw, cooking, water->amount.value()) / cooking.massYield;
  if (left < -kRoundingGrams) return CookingProblem::MoreThanFood;
  NutrientValue value = cooked(*water, 1.0, cooking);
  value.amount = AsFedContent(std::max(left, 0.0));
  // The scatter of the dry matter: it is what the water is worked out from.
  if (value.sd) value.sd = *value.sd / cooking.massYield;
  result.set(nutrients::water(), std::move(value));
  return result;
}

}  // namespace tarebowl::food
