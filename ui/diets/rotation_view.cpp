// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_view.h"

#include <algorithm>

namespace tarebowl::ui {

namespace {

using diet::LockedCell;
using quantity::Grams;

const std::string& idOf(const RotationView& view, std::size_t food) {
  return view.problem().base.foods.at(food).id;
}

void unlock(LockedCells& locks, int day, const std::string& food) {
  std::erase_if(locks, [&](const LockedCell& cell) { return cell.day == day && cell.food == food; });
}

void lock(LockedCells& locks, int day, const std::string& food, Grams grams) {
  unlock(locks, day, food);
  locks.push_back({.day = day, .food = food, .grams = grams});
}

}  // namespace

bool RotationView::isOver(int day) const {
  const auto& fed = problem().rules.fed;
  return std::ranges::find(fed, day, &diet::FedDay::day) != fed.end();
}

bool RotationView::isLocked(int day, std::size_t food) const {
  const std::string& id = problem().base.foods.at(food).id;
  return std::ranges::any_of(problem().rules.locked,
                             [&](const LockedCell& cell) { return cell.day == day && cell.food == id; });
}

LockedCells locksWithFoodMoved(const RotationView& view, std::size_t food, int from, int to) {
  LockedCells locks = view.problem().rules.locked;
  const Grams grams = view.gramsOn(from, food);
  if (from == to || view.isOver(from) || view.isOver(to) || !(grams > Grams(0))) return locks;
  lock(locks, from, idOf(view, food), Grams(0));
  lock(locks, to, idOf(view, food), grams);
  return locks;
}

LockedCells locksWithGrams(const RotationView& view, std::size_t food, int day, Grams grams) {
  LockedCells locks = view.problem().rules.locked;
  if (!view.isOver(day)) lock(locks, day, idOf(view, food), grams);
  return locks;
}

LockedCells locksWithCellTurned(const RotationView& view, std::size_t food, int day) {
  LockedCells locks = view.problem().rules.locked;
  if (view.isOver(day)) return locks;
  if (view.isLocked(day, food))
    unlock(locks, day, idOf(view, food));
  else
    lock(locks, day, idOf(view, food), view.gramsOn(day, food));
  return locks;
}

}  // namespace tarebowl::ui
