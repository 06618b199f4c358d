// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/prep_sheet.h"
#include "core/intake/tolerance.h"
#include "core/store/lot_verbs.h"
#include "core/store/swap_verbs.h"
#include "core/transfer/kitchen_day.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// A section's day as the window holds it: a snapshot, complete in itself.
struct KitchenSheet {
  std::vector<std::string> sections{};
  intake::PrepSheet sheet{};
  intake::ToleranceRule rule{};
  std::map<std::string, intake::KitchenFood> foods{};  ///< of every bowl and total
  std::vector<store::StoredSwap> swaps{};              ///< of the day
  std::vector<store::StoredControlPan> pans{};         ///< of the day, in this section
  std::vector<store::StoredLot> lots{};                ///< of all foods

  [[nodiscard]] intake::KitchenFood foodOf(const std::string& code) const;
  [[nodiscard]] transfer::JudgedBy judgedBy() const;
  /// That the food is fed from on the day of the sheet.
  [[nodiscard]] std::optional<store::StoredLot> lotOf(const std::string& food) const;
};

/// section: the first one where the collection has none of this name. Throws StoreError.
[[nodiscard]] KitchenSheet readKitchenSheet(const store::Collection& collection, const std::string& section,
                                            quantity::Date day);

/// A line of the sheet: positions of its bowl and of its food in it.
struct SheetLine {
  std::size_t bowl = 0;
  std::size_t item = 0;
  auto operator<=>(const SheetLine&) const = default;
};
/// What is to be weighed, in the order of the sheet.
[[nodiscard]] std::vector<SheetLine> linesToWeigh(const intake::PrepSheet& sheet);
[[nodiscard]] bool isWeighed(const intake::BowlItem& item);
struct WeighedSoFar {
  std::size_t lines = 0;
  std::size_t weighed = 0;
};
[[nodiscard]] WeighedSoFar weighedSoFar(const intake::PrepBowl& bowl);

}  // namespace tarebowl::ui
