// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/suggestion_edits.h"

#include <algorithm>

namespace tarebowl::ui {
namespace {

std::optional<std::size_t> placeOf(const DietDraft& draft, const std::string& id) {
  const auto& foods = draft.problem.foods;
  const auto found = std::ranges::find(foods, id, &diet::DietFood::id);
  if (found == foods.end()) return std::nullopt;
  return static_cast<std::size_t>(found - foods.begin());
}

}  // namespace

std::optional<DraftChange> tryOut(const DietDraft& draft, const QString& words, const AddedFood& added) {
  if (hasFood(draft, added.food.id)) return std::nullopt;
  const auto swap = [added](DietDraft& to) {
    if (const auto leaving = placeOf(to, added.inPlaceOf)) takeFood(to, *leaving);
    putFood(to, added.food, added.amount);
  };
  return wholeChange(draft, words, QStringLiteral("suggestion"),
                     [=](DietDraft& to) { restructure(to, swap, added.food); });
}

std::optional<DraftChange> tryOut(const DietDraft& draft, const QString& words, const RaisedFood& raised) {
  const auto food = placeOf(draft, raised.food);
  if (!food) return std::nullopt;
  return wholeChange(draft, words, QStringLiteral("suggestion"), [food = *food, raised](DietDraft& to) {
    diet::DietFood& line = to.problem.foods.at(food);
    if (line.max) line.max = std::max(*line.max, raised.amount);
    if (to.locked.at(food)) to.grams.at(food) = raised.amount;
  });
}

std::vector<animal::ChoiceRule> choicesWith(const DietDraft& draft, const MovedChoice& moved) {
  auto own = ownChoices(draft);
  const auto choice = std::ranges::find(own, moved.group, &animal::ChoiceRule::group);
  if (choice == own.end()) return own;
  if (moved.side == diet::BoundSide::Min)
    choice->atLeast = moved.to;
  else
    choice->atMost = moved.to;
  return own;
}

}  // namespace tarebowl::ui
