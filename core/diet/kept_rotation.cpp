// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/kept_rotation.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace tarebowl::diet {

namespace {

bool isNumber(const Reached& reached) {
  return std::isfinite(reached.value) && std::isfinite(reached.bound);
}

std::optional<KeptRotationProblem> problemWithCells(const KeptRotation& rotation) {
  std::set<std::tuple<int, std::string, Purpose, std::string>> seen;
  for (const PlannedCell& cell : rotation.cells) {
    if (cell.day < 0 || cell.day >= rotation.days()) return KeptRotationProblem::CellOutsidePeriod;
    if (cell.food.empty()) return KeptRotationProblem::CellWithoutFood;
    if (!std::isfinite(cell.amount.value()) || cell.amount.value() < 0.0)
      return KeptRotationProblem::NoAmount;
    if (!seen.emplace(cell.day, cell.food, cell.purpose, cell.meal).second)
      return KeptRotationProblem::CellTwice;
  }
  return std::nullopt;
}

}  // namespace

std::optional<std::size_t> placeOf(std::span<const PlaceInVersion> places, const PlannedCell& cell) {
  const auto place = std::ranges::find_if(places, [&](const PlaceInVersion& each) {
    return !each.allowance && cell.food == each.food && cell.purpose == each.purpose &&
           cell.meal == each.meal;
  });
  if (place == places.end()) return std::nullopt;
  return static_cast<std::size_t>(place - places.begin());
}

int dayOfPeriod(quantity::Date from, quantity::Date day) {
  return static_cast<int>((std::chrono::sys_days(day) - std::chrono::sys_days(from)).count());
}

int KeptRotation::days() const {
  return dayOfPeriod(from, until) + 1;
}

bool KeptRotation::isBalanced() const {
  return period.value <= kNoShortfall && daily.value <= kNoShortfall;
}

std::optional<KeptRotationProblem> problemWith(const KeptRotation& rotation) {
  if (rotation.until < rotation.from) return KeptRotationProblem::EndsBeforeItBegins;
  const int planned = dayOfPeriod(rotation.from, rotation.plannedFrom);
  if (planned < 0 || planned > rotation.days()) return KeptRotationProblem::PlannedOutsidePeriod;
  if (rotation.rules.empty()) return KeptRotationProblem::NoRules;
  if (rotation.at.empty()) return KeptRotationProblem::NotDated;
  for (const Reached& reached : {rotation.period, rotation.daily, rotation.wishes, rotation.objective})
    if (!isNumber(reached)) return KeptRotationProblem::NoValue;
  return problemWithCells(rotation);
}

}  // namespace tarebowl::diet
