// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"

#include <optional>
#include <span>
#include <string>

namespace tarebowl::intake {

/// A lot of a food as the box names it. It is fed from this day on, until the next lot of the food begins.
struct FoodLot {
  std::string food{};  ///< food::Food::code
  std::string lot{};   ///< "L 2026-311"
  quantity::Date from{};
  std::string who{};
  std::string note{};
  bool operator==(const FoodLot&) const = default;
};

/// The lot of a food that is fed on a day; nothing where nobody named one by then.
[[nodiscard]] std::optional<FoodLot> lotOn(std::span<const FoodLot> lots, const std::string& food,
                                           quantity::Date day);

}  // namespace tarebowl::intake
