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
                                const FoodDesk::Figures& group) {
  GroupStripState state;
  if (!desk.page()) return state;
  const food::Food& food = desk.page()->food.record.food;
  state.thisName = QString::fromStdString(food.name);
  state.unit = shownUnit(nutrient, desk.energy()) + QLatin1Char(' ') + textOf(basis, desk.energy());
  for (const auto& [id, figures] : group) {
    const food::Composition& composition = figures.composition;
    const auto* value = composition.find(nutrient);
    const auto amount =
        value == nullptr ? std::nullopt
                         : shownAmount(nutrient, basis, value->amount, factsOf(composition), desk.energy());
    if (id == desk.page()->food.id)
      state.thisFood = amount;
    else if (!amount)
      ++state.unknown;
    else if (const food::FoodLine* other = desk.lineOf(id))
      state.others.push_back({nameOf(*other), *amount});
  }
  const QString groupName = QString::fromStdString(food.group);
  state.title =
      Strip::tr("%1 in this collection's group “%2”, %3").arg(nutrientName(nutrient), groupName, state.unit);
  if (state.unknown > 0) state.title += Strip::tr(" · %1 without a value").arg(state.unknown);
  return state;
}

}  // namespace tarebowl::ui
