// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/health_page.h"

#include <string>
#include <string_view>
#include <vector>

/// What reviews and look-backs say in words, whatever they are written as.
namespace tarebowl::exchange {

inline constexpr std::string_view kAssociation =
    "This shows what went together, not what caused what: foods that change together, the season, an "
    "infection "
    "or chance can look the same.";

/// "2.1 g limestone a day in the bowl would bring calcium and Ca:P into zone (exactly 2.03 g) …"
[[nodiscard]] std::string doseSentence(const CalciumPage& page);
/// "Oxalate could bind up to 12 % of the calcium eaten …"; says so where it is known of no food.
[[nodiscard]] std::string oxalateSentence(const health::OxalateShare& share);
[[nodiscard]] std::string phytateSentence(const health::PhytateShare& share);
/// "Intake is known on 104 of 120 days …"
[[nodiscard]] std::string coverageSentence(const health::CalciumReview& review);
[[nodiscard]] std::vector<std::string> cautionsOf(const CalciumPage& page);

/// "8 of 9 days with broccoli, raw, 1 of 110 days without"
[[nodiscard]] std::string countsSentence(const health::FoodLink& link);
[[nodiscard]] std::string differenceSentence(const health::Difference& difference,
                                             const HealthSubjectLine& subject);
/// How many days were compared, and which were not and why.
[[nodiscard]] std::string comparedSentence(const LookBackPage& page);

/// "8.1" where nothing is known "?"; with its unit: "mg", "ug".
[[nodiscard]] std::string_view symbolFor(food::NutrientId nutrient);
/// "Calcium", "Calcium : Phosphorus".
[[nodiscard]] std::string zoneName(const health::CalciumZone& zone);
/// "g per kg DM", "" of a ratio.
[[nodiscard]] std::string zoneUnit(const health::CalciumZone& zone);
/// "Calcium, g per kg DM", "Calcium : Phosphorus".
[[nodiscard]] std::string zoneTitle(const health::CalciumZone& zone);
/// "0.00071": three digits that count; "< 0.0001" below.
[[nodiscard]] std::string chanceText(double p);

}  // namespace tarebowl::exchange
