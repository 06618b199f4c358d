// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/page_tongue.h"
#include "core/intake/prep_sheet.h"

#include <span>
#include <string>
#include <string_view>

/// A section's sheet of a day as pages for the kitchen's wall, as labels for its bowls, and as a file.
namespace tarebowl::exchange {

/// Large type; as many pages as it takes. A page of its own, style included; every text is escaped.
[[nodiscard]] std::string prepSheetAsHtml(const intake::PrepSheet& sheet, const intake::FoodLookup& foodOf,
                                          const PageTongue& tongue = {});
/// A label for each bowl, two beside each other, to be cut or printed on stickers.
[[nodiscard]] std::string bowlLabelsAsHtml(const intake::PrepSheet& sheet, const PageTongue& tongue = {});
/// "tarebowl-prep/1".
[[nodiscard]] std::string prepSheetAsJson(const intake::PrepSheet& sheet, const intake::FoodLookup& foodOf);

/// What every kitchen keeps to (common practice, no source).
[[nodiscard]] std::span<const std::string_view> hygieneRules();

/// "3 pieces (120 g)", "120.9 g": as the scale and the hand have it.
[[nodiscard]] std::string portionText(quantity::Grams amount, const intake::KitchenFood& food,
                                      const PageTongue& tongue = {});
/// "Kale, raw"
[[nodiscard]] std::string foodTitle(const intake::KitchenFood& food, const PageTongue& tongue = {});
/// "no diet is in force", "nobody knows how many animals it has", "it has no animal today"
[[nodiscard]] std::string_view reasonText(intake::NoBowl why);
/// "90 g carrot, raw", with what is to be bought; "? of carrot, raw (its yield is not known)"; empty for a
/// food that goes into the bowl as it comes.
[[nodiscard]] std::string rawText(const intake::KitchenTotal& total, const PageTongue& tongue = {});
/// "Day-old chick, whole: 3 pieces (120 g)"
[[nodiscard]] std::string aheadText(const intake::KitchenTotal& total, const PageTongue& tongue = {});

}  // namespace tarebowl::exchange
