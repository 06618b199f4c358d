// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/quantity.h"

#include <QString>

#include <optional>

class QLineEdit;
class QWidget;

/// What the panes of the kitchen share: type that reads from where the bowls stand, and weights as typed.
namespace tarebowl::ui {

inline constexpr int kFoodPoints = 20;
inline constexpr int kFieldPoints = 34;
inline constexpr int kWordPoints = 16;

void setPoints(QWidget* widget, int points, bool bold = false);
/// The field for a weight in g.
[[nodiscard]] QLineEdit* makeWeightField();
/// Grams in the person's locale or with a point, also below nothing; nothing for anything else.
[[nodiscard]] std::optional<quantity::Grams> typedGrams(const QString& text);
struct LeftAndLost {
  std::optional<quantity::Grams> left{};
  std::optional<quantity::Grams> lost{};
};
/// "3 + 4", "3" or "+ 4": either may be left out, both too. Nothing where one is no weight.
[[nodiscard]] std::optional<LeftAndLost> typedLeftAndLost(const QString& text);

}  // namespace tarebowl::ui
