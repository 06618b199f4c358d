// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "ui/diets/diet_draft.h"
#include "ui/shared/nutrient_text.h"

#include <QString>

/// How the targets, ratios and shares of a problem are called in the trade's words.
namespace tarebowl::ui {

[[nodiscard]] RungRef refOf(const diet::TargetBalance& target);

/// "Calcium", "Ca : P", "Leafy vegetable".
[[nodiscard]] QString rungName(const diet::BalanceProblem& problem, RungRef rung);
/// "g/kg DM"; nothing for a ratio; "% of DM" for a share.
[[nodiscard]] QString rungUnit(const diet::BalanceProblem& problem, RungRef rung);
/// The number that is shown: shares are kept as 0 … 1 and read in %.
[[nodiscard]] double shownValue(RungRef rung, double value);
/// "5–12 g/kg DM", "at least 5 g/kg DM", "at most 2".
[[nodiscard]] QString boundsText(const diet::BalanceProblem& problem, RungRef rung);
[[nodiscard]] bool isHard(const diet::BalanceProblem& problem, RungRef rung);
[[nodiscard]] const animal::TargetOrigin& originOf(const diet::BalanceProblem& problem, RungRef rung);
/// "Source; model species: dog; from memory, verify" or an empty text.
[[nodiscard]] QString originText(const diet::BalanceProblem& problem, RungRef rung);

/// The name behind an id of a conflict: a target's, ratio's or share's name with the bound in words, "the
/// choice among GROUP", or the id itself.
[[nodiscard]] QString conflictName(const diet::BalanceProblem& problem, const std::string& id);

/// "Ca" for minerals that are known by their symbol, else the name.
[[nodiscard]] QString shortNutrientName(food::NutrientId nutrient);

}  // namespace tarebowl::ui
