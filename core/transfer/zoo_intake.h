// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"
#include "core/quantity/date.h"
#include "core/store/collection.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// What all groups ate over some days, side by side.
namespace tarebowl::transfer {

/// In the nutrient's own unit, per animal and day, over the days that are known. Nothing where none is, or
/// where the value of no food eaten is known.
struct NutrientOfGroup {
  std::optional<double> offered{};
  std::optional<double> eaten{};
  double coverage = 1.0;  ///< share of the grams eaten that come from foods with a known value
};

struct GroupIntake {
  std::string group{};
  std::string name{};
  std::string section{};
  std::size_t days = 0;  ///< with a bowl
  std::size_t daysKnown = 0;
  std::size_t bowls = 0;
  double animalDays = 0.0;                   ///< of the days that are known
  double eatenGrams = 0.0;                   ///< on them, as fed, by all
  std::vector<NutrientOfGroup> nutrients{};  ///< as asked, index for index
};

/// Both days are in it; groups without a bowl are left out. In the order of sections and groups. A group is
/// read and summed before the next. Throws StoreError.
[[nodiscard]] std::vector<GroupIntake> readZooIntake(const store::Collection& collection, quantity::Date from,
                                                     quantity::Date to,
                                                     std::span<const food::NutrientId> nutrients);

}  // namespace tarebowl::transfer
