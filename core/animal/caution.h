// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::animal {

enum class CautionSeverity {
  Never,    ///< refused for the animals concerned; given only with a reason that is kept
  Limit,    ///< a little may be right: shown, and asked for confirmation
  Consider  ///< an interaction worth a note
};

/// A food that is known to be dangerous or to need thought, from resources/data/cautions.json or the house's
/// own list.
struct FoodCaution {
  std::string id{};
  /// In a food's name or code: "avocado", "green potato" (all its words, in any order). Words, groups and
  /// forms are folded (food/folding.h), whole words.
  std::vector<std::string> words{};
  std::vector<std::string> groups{};  ///< food groups
  /// Only in these forms: "raw"; empty: in all. A food of unknown form may be in any.
  std::vector<std::string> forms{};
  std::vector<std::string>
      taxa{};  ///< animals concerned, as in Species::taxa ("lemur", "Lemurs"); empty: all
  CautionSeverity severity = CautionSeverity::Consider;
  std::string reason{};  ///< why: "persin damages the heart muscle"
  std::string advice{};  ///< what to do
  TargetOrigin origin{};
  bool operator==(const FoodCaution&) const = default;
};

/// The list that comes with the program. It is not complete, and says so wherever it is shown.
[[nodiscard]] std::span<const FoodCaution> knownCautions();

/// What a caution looks at in a food.
struct CautionedFood {
  std::string_view code{};
  std::string_view name{};
  std::string_view form{};
  std::string_view group{};
  std::span<const std::string> cautions{};  ///< ids that the house put on the food itself
};

/// Cautions that concern this food for an animal of these taxa, the gravest first. Empty taxa: the animal is
/// not known, and every caution of the food concerns it.
[[nodiscard]] std::vector<const FoodCaution*> cautionsFor(const CautionedFood& food,
                                                          std::span<const std::string> taxa,
                                                          std::span<const FoodCaution> known);

}  // namespace tarebowl::animal
