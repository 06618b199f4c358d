// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/tolerance.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// Why a weight is asked about before it is kept. Confirmed, it is kept as it is; a weight below nothing is
/// not kept: the bowl is tared and weighed again.
enum class WeighingDoubt {
  BelowNothing,  ///< a tare that was taken with something on the scale
  TenTimes,      ///< about ten times the plan: 200 typed for 20.0
  TenthOf,       ///< about a tenth of it
  NotInGrams,    ///< about the plan in ounces
  Under,         ///< by more than the tolerance
  Over,
  AsBowlBefore,   ///< what another bowl's line weighed within the same minute: read twice?
  ClockWentBack,  ///< an entry of this sheet is later than now
  DayToCome       ///< the sheet is of a day to come
};

/// The last weight that was read before this one.
struct WeightBefore {
  quantity::Grams actual{};
  std::string at{};
  bool otherBowl = false;
};

struct WeighingFacts {
  quantity::Date day{};  ///< of the sheet
  quantity::Grams planned{};
  quantity::Grams tolerance{};
  std::optional<WeightBefore> before{};
};

/// In the order in which they are to be asked; empty where there is nothing to ask. at: ISO 8601 UTC.
[[nodiscard]] std::vector<WeighingDoubt> doubtsAbout(quantity::Grams actual, const std::string& at,
                                                     const WeighingFacts& facts);

}  // namespace tarebowl::intake
