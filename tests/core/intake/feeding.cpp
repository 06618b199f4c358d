// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/intake/feeding.h"

namespace tarebowl::intake::testing {

diet::DietFood foodOf(std::string id, double water, double calcium, double phosphorus, double calciumSd) {
  diet::DietFood food;
  food.id = std::move(id);
  food.composition.set(food::nutrients::water(), {.amount = quantity::AsFedContent(water)});
  food::NutrientValue ofCalcium{.amount = quantity::AsFedContent(calcium)};
  if (calciumSd > 0.0) ofCalcium.sd = quantity::AsFedContent(calciumSd);
  food.composition.set(food::nutrients::calcium(), ofCalcium);
  food.composition.set(food::nutrients::phosphorus(), {.amount = quantity::AsFedContent(phosphorus)});
  return food;
}

EatenBowl eatenAsSeen(const FedBowl& bowl, std::uint32_t serial) {
  return eatenFrom(bowl, PanBook({}, {}, {"greens", "roots", "insects"}), serial);
}

}  // namespace tarebowl::intake::testing
