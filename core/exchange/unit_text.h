// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/basis.h"
#include "core/quantity/unit.h"

#include <optional>
#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// So much per so much, as a table writes it: "mg/100 g", "g per kg DM", "% as fed", "kcal", "MJ/kg".
struct UnitText {
  quantity::Unit unit = quantity::Unit::Gram;
  double factor = 1.0;                     ///< amount in unit = factor * amount as written: 1000 for MJ
  std::optional<double> per{};             ///< g of food or dry matter, or kcal; nothing: not said
  std::optional<quantity::Basis> basis{};  ///< AsFed, DryMatter or Energy; nothing: not said
  bool operator==(const UnitText&) const = default;
};

/// Nothing where any part of it is not understood: "g/16 g N" is no content of a food.
[[nodiscard]] std::optional<UnitText> parseUnitText(std::string_view text);
/// "mg/100 g dry matter": reads back as the same.
[[nodiscard]] std::string unitText(const UnitText& unit);

/// A title such as "Calcium (mg/100 g)" or "Ca_mg_kg" in its parts. unitPart is empty where none is
/// understood.
struct TitleParts {
  std::string label;
  std::optional<UnitText> unit{};
  bool operator==(const TitleParts&) const = default;
};
[[nodiscard]] TitleParts partsOfTitle(std::string_view title);

}  // namespace tarebowl::exchange
