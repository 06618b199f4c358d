// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/column_mapping.h"

#include <QString>
#include <QStringList>

#include <optional>

/// What a column of a table becomes, in words that a person can type.
namespace tarebowl::ui {

/// "leave out", "food", "Calcium (CA)", "SD of Calcium (CA)"; in a long table "nutrient", "value", "SD".
[[nodiscard]] QString becomesText(const exchange::ColumnUse& use, bool isLong);
/// Puts role and nutrient where the words are understood: those of becomesText(), a nutrient by tagname or by
/// a laboratory's word for it, "SD of ca". Nothing where they are not. Title, number and unit stay.
[[nodiscard]] std::optional<exchange::ColumnUse> readBecomes(const QString& text, exchange::ColumnUse use,
                                                             bool isLong);
/// Everything that can be chosen; the same words.
[[nodiscard]] QStringList becomesChoices(bool isLong);
/// "Calcium (CA)".
[[nodiscard]] QString nutrientWithTag(food::NutrientId nutrient);

/// The unit without its basis: "mg/100 g", "g/kg"; empty where none is said.
[[nodiscard]] QString unitWords(const std::optional<exchange::UnitText>& unit);
/// "as fed", "dry matter", "1000 kcal".
[[nodiscard]] QString basisWords(quantity::Basis basis);

}  // namespace tarebowl::ui
