// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/rotation_locks.h"
#include "core/diet/rotation_standing.h"
#include "core/transfer/rotation_desk.h"

#include <cstddef>

namespace tarebowl::ui {

/// A rotation as the calendar shows it: a snapshot, with how it stands.
struct RotationView {
  transfer::RotationOnDesk on{};
  diet::RotationStanding standing{};

  [[nodiscard]] const diet::RotationProblem& problem() const { return on.desk.problem; }
  [[nodiscard]] const diet::KeptRotation& kept() const { return on.kept.record; }
  [[nodiscard]] int days() const { return static_cast<int>(on.days.size()); }
  [[nodiscard]] quantity::Date dateOf(int day) const { return exchange::dateOfDay(on.desk.from, day); }
  [[nodiscard]] quantity::Grams gramsOn(int day, std::size_t food) const {
    return on.days.at(static_cast<std::size_t>(day)).at(food);
  }
  /// It was fed: nothing of it can be planned any more.
  [[nodiscard]] bool isOver(int day) const { return diet::isOver(problem().rules, day); }
  [[nodiscard]] bool isLocked(int day, std::size_t food) const {
    return diet::isLocked(problem(), day, food);
  }
  /// Given unweighed, at each feeding: not planned by the day.
  [[nodiscard]] bool isAllowance(std::size_t food) const {
    return on.desk.places.at(food).allowance.has_value();
  }
};

}  // namespace tarebowl::ui
