// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/intake/eaten.h"
#include "core/quantity/date.h"

#include <string>
#include <string_view>
#include <vector>

/// Short ways to say a feeding day in a test. Everything made here is invented, with round numbers.
namespace tarebowl::intake::testing {

inline quantity::Date day(std::string_view iso) {
  return quantity::parseDate(iso).value();
}
inline quantity::Date dayAfter(std::string_view iso, int days) {
  return std::chrono::sys_days(day(iso)) + std::chrono::days(days);
}

/// A weighing on a scale that is taken for exact, or of a step.
inline ScaleReading weighed(double grams, double step = 0.0) {
  return {quantity::Grams(grams), quantity::Grams(step)};
}

inline FedItem fed(std::string food, double offered, Remains remains, std::string foodClass = "greens") {
  return {std::move(food), std::move(foodClass), weighed(offered), std::move(remains), {}};
}

inline FedBowl bowlOf(std::vector<FedItem> items, quantity::Date on = day("2026-09-01")) {
  return {.group = "lemurs", .day = on, .place = "lemur house", .items = std::move(items)};
}

inline WaterPan pan(double start, double end, quantity::Date on = day("2026-09-01"),
                    std::string food = "kale", std::string foodClass = "greens") {
  return {"lemur house", on, std::move(food), std::move(foodClass), weighed(start), weighed(end)};
}

/// A food of a class whose gram holds so much dry matter and calcium and phosphorus (mg per 100 g).
[[nodiscard]] diet::DietFood foodOf(std::string id, double water, double calcium, double phosphorus,
                                    double calciumSd = 0.0);

/// What was eaten of a bowl whose leftovers need no pan.
[[nodiscard]] EatenBowl eatenAsSeen(const FedBowl& bowl, std::uint32_t serial = 1);

}  // namespace tarebowl::intake::testing
