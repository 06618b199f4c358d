// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/group_strip_state.h"

#include "ui/shared/format.h"

#include <QCoreApplication>

namespace tarebowl::ui {
namespace {

struct Strip {
  Q_DECLARE_TR_FUNCTIONS(Strip)
};

}  // namespace

GroupStripState groupStripState(const FoodDesk& desk, food::NutrientId nutrient, CompositionBasis basis,
                                const FoodDesk::Compositions& group) {
  GroupStripState state;
  if (!desk.page()) return state;
  const food::Food& food = desk.page()->food;
  state.thisName = nameOf(food);
  state.unit = unitText(food::describe(nutrient).unit) + QLatin1Char(' ') + textOf(basis);
  for (const auto& [key, composition] : group) {
    const auto* value = composition.find(nutrient);
    const auto amount =
        value == nullptr ? std::nullopt : amountOn(basis, value->amount, factsOf(composition));
    if (key == desk.page()->key)
      state.thisFood = amount;
    else if (!amount)
      ++state.unknown;
    else if (const auto other = desk.foodOf(key))
      state.others.push_back({nameOf(*other), *amount});
  }
  const QString groupName = QString::fromStdString(food.group);
  state.title =
      Strip::tr("%1 in this collection's group “%2”, %3").arg(nutrientName(nutrient), groupName, state.unit);
  if (state.unknown > 0) state.title += Strip::tr(" · %1 without a value").arg(state.unknown);
  return state;
}

}  // namespace tarebowl::ui
