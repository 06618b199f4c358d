// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/quantity/date.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// One nutrient of faeces as a laboratory found it: per 100 g of dry matter, in the nutrient's own unit.
struct FaecesValue {
  food::NutrientId nutrient{0};
  double per100gDryMatter = 0.0;  ///< 0 or more
  std::optional<double> sd{};
  bool operator==(const FaecesValue&) const = default;
};

/// All faeces of a group over some days, gathered, weighed and analysed.
struct FaecesCollected {
  std::string group{};  ///< animal::Group::code
  quantity::Date from{};
  quantity::Date until{};   ///< is in it
  quantity::Grams fresh{};  ///< as found, above 0
  double dryMatter = 0.0;   ///< g per 100 g fresh, above 0 and at most 100
  std::optional<double> dryMatterSd{};
  std::vector<FaecesValue> values{};  ///< each nutrient once
  std::string source{};               ///< "Field laboratory report 2026-201"
  std::string who{};
  std::string note{};
  bool operator==(const FaecesCollected&) const = default;
};

/// What makes a collection of faeces unsound.
enum class FaecesProblem {
  DaysBackwards,
  NothingWeighed,
  NoDryMatter,   ///< not above 0, or above 100
  BadValue,      ///< a value or scatter below 0
  TwiceTheSame,  ///< a nutrient that stands in it twice
  Energy         ///< metabolizable energy is no property of faeces
};
[[nodiscard]] std::optional<FaecesProblem> problemWith(const FaecesCollected& faeces);

}  // namespace tarebowl::intake
