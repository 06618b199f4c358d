// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/diet_sheet.h"
#include "core/exchange/page_tongue.h"

#include <string>

/// What a sheet says in words, whatever it is written as.
namespace tarebowl::exchange {

inline constexpr const char* kInventedMark =
    "INVENTED SAMPLE: animals, masses, products and decisions on this sheet are made up. Not for feeding.";

/// "Draft: not for feeding." "Approved by Vet on 2026-09-11: tried for a week."
[[nodiscard]] std::string stateSentence(const diet::DietVersion& version, const PageTongue& tongue = {});
/// "Fed from 2026-09-15, phased in over 5 days." Empty while nothing is approved.
[[nodiscard]] std::string feedingSentence(const diet::DietVersion& version, const PageTongue& tongue = {});
/// "Trio, 3 animals of 0.14 kg, Small Mammals"
[[nodiscard]] std::string subjectLine(const DietSheet& sheet, const PageTongue& tongue = {});
/// "15.2 kcal and 0.11 in cost per animal and day (2 foods without a price)"
[[nodiscard]] std::string energyAndCost(const DietSheet& sheet, const PageTongue& tongue = {});
/// "Set otherwise than the targets say: calcium 6 … 12 (growing)." Empty where nothing is.
[[nodiscard]] std::string ownBoundsSentence(const diet::DietVersion& version, const PageTongue& tongue = {});
/// "? Not judged: iodine (of no food is it known); browse (no food is of its group)." Empty where all rules
/// are.
[[nodiscard]] std::string notJudgedSentence(const DietSheet& sheet, const PageTongue& tongue = {});
/// "Energy and targets are of what is eaten: kale 35 %, carrot 80 %; all else is eaten up." Empty where all
/// is counted as eaten.
[[nodiscard]] std::string eatenSentence(const DietSheet& sheet, const PageTongue& tongue = {});
/// "0.5 … 1.5" of an allowance, or else the grams as the scale shows them; for so many animals.
[[nodiscard]] std::string amountText(const SheetFood& food, int animals, const PageTongue& tongue = {});

}  // namespace tarebowl::exchange
