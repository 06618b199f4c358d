// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/sample.h"
#include "core/quantity/date.h"

#include <optional>
#include <span>
#include <vector>

namespace tarebowl::food {

/// "Calcium of the pellet every six months." everyMonths: 1 or more.
struct PlannedAnalysis {
  NutrientId nutrient{0};
  int everyMonths = 12;
  bool operator==(const PlannedAnalysis&) const = default;
};

struct DueAnalysis {
  NutrientId nutrient{0};
  std::optional<quantity::Date> last{};  ///< the newest own sample that has it; missing: there is none
  std::optional<quantity::Date> due{};   ///< missing: since ever
  bool operator==(const DueAnalysis&) const = default;
};

/// What of the plan is due on a day, the longest overdue first. Own lab's dated samples count, unless they
/// were excluded.
[[nodiscard]] std::vector<DueAnalysis> dueOn(quantity::Date day, std::span<const PlannedAnalysis> plan,
                                             std::span<const Sample> samples);

}  // namespace tarebowl::food
