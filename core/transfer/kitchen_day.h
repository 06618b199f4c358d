// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/prep_sheet.h"
#include "core/intake/tolerance.h"
#include "core/intake/weighing_doubt.h"
#include "core/store/feeding_verbs.h"

#include <optional>
#include <string>
#include <vector>

/// A section's day in the kitchen, from what the collection holds. Throws StoreError.
namespace tarebowl::transfer {

/// Every section that has a group, by its name.
[[nodiscard]] std::vector<std::string> sectionsOf(const store::Collection& collection);

/// The sheet as it is: bowls that were opened as they were opened, with what was weighed and swapped; those
/// that were not, from the diets in force.
[[nodiscard]] intake::PrepSheet readPrepSheet(const store::Collection& collection, const std::string& section,
                                              quantity::Date day);

/// Writes down the bowls of the sheet that were not opened yet.
store::OpenedSheet openDay(store::Collection& collection, const intake::PrepSheet& sheet,
                           const store::Author& author);

/// What a weight of one food of a bowl is judged by.
struct JudgedBy {
  intake::ToleranceRule rule{};
  intake::FoodLookup foodOf{};
};
[[nodiscard]] quantity::Grams toleranceIn(const intake::PrepBowl& bowl, const std::string& food,
                                          const JudgedBy& by);

/// What is to be asked about a weight of a food of the bowl before it is kept (intake/weighing_doubt.h).
[[nodiscard]] std::vector<intake::WeighingDoubt> doubtsIn(
    const intake::PrepBowl& bowl, const intake::BowlItem& item, quantity::Grams actual, const std::string& at,
    const JudgedBy& by, const std::optional<intake::WeightBefore>& before = std::nullopt);

/// Foods of the collection as the kitchen sees them; each is read once.
[[nodiscard]] intake::FoodLookup kitchenFoods(const store::Collection& collection);

}  // namespace tarebowl::transfer
