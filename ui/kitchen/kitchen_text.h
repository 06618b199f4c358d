// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/weighing_doubt.h"
#include "ui/kitchen/kitchen_sheet.h"
#include "ui/shared/state_mark.h"

#include <QString>
#include <QStringList>

/// What the kitchen says in words; few of them.
namespace tarebowl::ui {

/// "kale, raw"; what is not in the collection says so.
[[nodiscard]] QString foodText(const intake::KitchenFood& food);
/// "3 pieces (120 g)", "120.9 g".
[[nodiscard]] QString portionText(quantity::Grams amount, const intake::KitchenFood& food);
/// A tolerance never reads wider than it is: 0.849 → "0.84".
[[nodiscard]] QString toleranceText(quantity::Grams tolerance);
/// "3 animals · 138 g in all · day 2 of 7 of a new diet".
[[nodiscard]] QString bowlFacts(const intake::PrepBowl& bowl);
/// "3 of 7 weighed".
[[nodiscard]] QString soFarText(const WeighedSoFar& so);
[[nodiscard]] Mark markOf(const WeighedSoFar& so);

[[nodiscard]] Mark markOf(intake::WeightState state);
/// "in", "under", "over".
[[nodiscard]] QString wordOf(intake::WeightState state);
/// A question about a weight, with what to do.
[[nodiscard]] QString doubtText(intake::WeighingDoubt doubt);
/// All questions about it, a line each, and how it is kept all the same.
[[nodiscard]] QString questionText(const std::vector<intake::WeighingDoubt>& doubts);
/// "120 g by Keeper A at 07:31; before that 200 g (typed wrongly)": every entry of a line, also a second one.
[[nodiscard]] QString entriesText(const intake::BowlItem& item, const intake::KitchenFood& food);

/// "12 g left", "all eaten", "not weighed", "stolen, 3 g left"; empty where nobody said anything.
[[nodiscard]] QString leftText(const intake::BowlItem& item, const intake::KitchenFood& food);
[[nodiscard]] QString withoutBowlText(const intake::GroupWithoutBowl& group);
/// What is given without weighing.
[[nodiscard]] QString allowanceText(const diet::Allowance& allowance, const intake::KitchenFood& food);
/// "20 g carrot, raw · 25 g as bought".
[[nodiscard]] QString rawText(const intake::KitchenTotal& total);
[[nodiscard]] QStringList hygieneTexts();

}  // namespace tarebowl::ui
