// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/animal_words.h"
#include "core/diet/diet_words.h"
#include "core/diet/problem.h"
#include "core/food/composition.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>

/// The words of a problem file that no other module owns, in both directions.
namespace tarebowl::exchange {

inline constexpr std::string_view kProblemFormat = "tarebowl-problem/1";
inline constexpr std::string_view kLarderFormat = "tarebowl-larder/1";
inline constexpr std::string_view kResultFormat = "tarebowl-result/1";

inline constexpr std::array<std::string_view, 6> kEnergyMethodWords{
    "given", "atwater", "modified-atwater", "dog-2006", "cat-2006", "poultry-amen"};
inline constexpr std::array<std::string_view, 6> kBasisWords{"as-fed", "dry-matter", "energy",
                                                             "day",    "body-mass",  "metabolic-mass"};
inline constexpr std::array<std::string_view, 3> kShareBasisWords{"as-fed", "dry-matter", "energy"};
inline constexpr std::array<std::string_view, 6> kUnitWords{"g", "mg", "ug", "kcal", "kJ", "IU"};

/// In the order of the enumerators.
inline constexpr std::span<const std::string_view> kObjectiveWords =
    animal::Words<diet::Objective::Kind>::kWords;
inline constexpr std::array<std::string_view, 8> kQualifierWords{"=",     ">=", "<=", "<LOQ",
                                                                 "trace", "<",  ">",  "n.d."};
/// Without Unstated, which has no word.
inline constexpr std::span<const std::string_view> kProvenanceWords =
    std::span(animal::Words<animal::Provenance>::kWords).subspan(1);

[[nodiscard]] std::optional<food::Qualifier> parseQualifier(std::string_view text);
/// Only the bases of which a food group can be a share.
[[nodiscard]] std::optional<quantity::Basis> parseShareBasis(std::string_view text);

[[nodiscard]] std::string_view symbolOf(food::Qualifier qualifier);

}  // namespace tarebowl::exchange
