// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_locks.h"

#include <algorithm>

namespace tarebowl::diet {

namespace {

using quantity::Grams;

const std::string& idOf(const RotationProblem& problem, std::size_t food) {
  return problem.base.foods.at(food).id;
}

Grams gramsOn(const std::vector<Diet>& days, int day, std::size_t food) {
  return days.at(static_cast<std::size_t>(day)).at(food);
}

void unlock(LockedCells& locks, int day, const std::string& food) {
  std::erase_if(locks, [&](const LockedCell& cell) { return cell.day == day && cell.food == food; });
}

void lock(LockedCells& locks, int day, const std::string& food, Grams grams) {
  unlock(locks, day, food);
  locks.push_back({.day = day, .food = food, .grams = grams});
}

}  // namespace

bool isOver(const RotationRules& rules, int day) {
  return std::ranges::find(rules.fed, day, &FedDay::day) != rules.fed.end();
}

bool isLocked(const RotationProblem& problem, int day, std::size_t food) {
  return std::ranges::any_of(problem.rules.locked, [&](const LockedCell& cell) {
    return cell.day == day && cell.food == idOf(problem, food);
  });
}

LockedCells locksWithFoodMoved(const RotationProblem& problem, const std::vector<Diet>& days,
                               std::size_t food, int from, int to) {
  LockedCells locks = problem.rules.locked;
  const Grams grams = gramsOn(days, from, food);
  if (from == to || isOver(problem.rules, from) || isOver(problem.rules, to) || !(grams > Grams(0)))
    return locks;
  lock(locks, from, idOf(problem, food), Grams(0));
  lock(locks, to, idOf(problem, food), grams);
  return locks;
}

LockedCells locksWithGrams(const RotationProblem& problem, std::size_t food, int day, Grams grams) {
  LockedCells locks = problem.rules.locked;
  if (!isOver(problem.rules, day)) lock(locks, day, idOf(problem, food), grams);
  return locks;
}

LockedCells locksWithCellTurned(const RotationProblem& problem, const std::vector<Diet>& days,
                                std::size_t food, int day) {
  LockedCells locks = problem.rules.locked;
  if (isOver(problem.rules, day)) return locks;
  if (isLocked(problem, day, food))
    unlock(locks, day, idOf(problem, food));
  else
    lock(locks, day, idOf(problem, food), gramsOn(days, day, food));
  return locks;
}

}  // namespace tarebowl::diet
