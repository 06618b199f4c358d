// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/allowance.h"

#include <cmath>

namespace tarebowl::diet {

using quantity::AsFedContent;
using quantity::Grams;

DietFood asFood(const Allowance& allowance, const DietFood& food) {
  DietFood given = food;
  given.id = food.id + " (" + std::string(symbolOf(allowance.purpose)) + ")";
  const Grams middle = (allowance.low + allowance.high) / 2.0;
  given.min = middle;
  given.max = middle;
  if (middle <= Grams(0)) return given;
  given.scaleStep = middle;  // nobody weighs it: its middle need not be on the scale
  const double relative = (allowance.high - allowance.low) / middle / std::sqrt(12.0);
  for (const food::NutrientId nutrient : food.composition.knownNutrients()) {
    food::NutrientValue value = *food.composition.find(nutrient);
    const double own = value.sd ? value.sd->value() : 0.0;
    value.sd = AsFedContent(std::hypot(own, value.amount.value() * relative));
    given.composition.set(nutrient, value);
  }
  return given;
}

}  // namespace tarebowl::diet
