// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/diet/rotation.h"
#include "core/diet/version_problem.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::diet {

/// One food on one day of a rotation that is kept. A cell that is not there is not fed and free.
struct PlannedCell {
  int day = 0;         ///< from 0, the first of the period
  std::string food{};  ///< food::Food::code
  Purpose purpose = Purpose::Bowl;
  std::string meal{};
  quantity::Grams amount{};  ///< per animal, as fed
  bool locked = false;       ///< stays when the rest is planned again; locked at 0 g: not fed that day
  bool operator==(const PlannedCell&) const = default;
};

/// A rotation of a version of a diet, as a collection keeps it.
struct KeptRotation {
  std::string diet{};  ///< NamedDiet::code
  int version = 1;
  quantity::Date from{};
  quantity::Date until{};        ///< the last day
  quantity::Date plannedFrom{};  ///< days before it hold what was fed
  std::string rules{};           ///< a file of rules (exchange/rotation_json.h)
  long long seed = 1;
  bool asEaten = false;  ///< days that are over count as eaten
  Reached period{};      ///< as RotationPlan has them
  Reached daily{};
  Reached wishes{};
  Reached objective{};
  std::string who{};  ///< who made it; empty where the window was not told
  std::string at{};   ///< ISO 8601 UTC
  std::string note{};
  std::vector<PlannedCell> cells{};
  [[nodiscard]] int days() const;
  [[nodiscard]] bool has(quantity::Date day) const { return day >= from && day <= until; }
  [[nodiscard]] bool isBalanced() const;
  bool operator==(const KeptRotation&) const = default;
};

/// What is wrong with a rotation as it is written.
enum class KeptRotationProblem {
  EndsBeforeItBegins,
  PlannedOutsidePeriod,  ///< plannedFrom is before the first day or more than a day after the last
  NoRules,
  NotDated,
  CellOutsidePeriod,
  CellWithoutFood,
  NoAmount,  ///< below 0, or no number
  CellTwice,
  NoValue,  ///< what it reaches is no number
};
[[nodiscard]] std::optional<KeptRotationProblem> problemWith(const KeptRotation& rotation);

/// Which food of a version's problem a cell is; nothing where the version has it no more. Allowances are no
/// cells.
[[nodiscard]] std::optional<std::size_t> placeOf(std::span<const PlaceInVersion> places,
                                                 const PlannedCell& cell);

/// The number of a day of a period, from 0.
[[nodiscard]] int dayOfPeriod(quantity::Date from, quantity::Date day);

}  // namespace tarebowl::diet
