// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/basis.h"
#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"

#include <QLocale>
#include <QString>

/// Numbers as a person reads them, in the person's own locale; more of them in decimal_text.h. A comma or a
/// point is always the decimal mark: nothing sets thousands apart.
namespace tarebowl::ui {

/// With three figures, or all figures before the point: 6.93, 24.6, 118, 5200.
[[nodiscard]] QString measured(double value, const QLocale& locale = QLocale());
/// As short as it can be said with six figures: 5, 1.2, 0.55, 2500. For bounds, which people wrote
/// themselves.
[[nodiscard]] QString stated(double value, const QLocale& locale = QLocale());
/// 0.34 → "34 %"; below 10 % with one digit where that says more.
[[nodiscard]] QString percent(double share, const QLocale& locale = QLocale());

/// Digits after the point that a scale with this step shows: 1 → 0, 0.1 → 1, 0.05 → 2.
[[nodiscard]] int scaleDecimals(quantity::Grams step);
/// Grams with the digits of the scale; more where the grams do not lie on its steps.
[[nodiscard]] QString grams(quantity::Grams mass, quantity::Grams step, const QLocale& locale = QLocale());
[[nodiscard]] QString kilograms(quantity::Kilograms mass, const QLocale& locale = QLocale());
/// 840 µs → "0.8 ms", 4 ms, 2.1 s.
[[nodiscard]] QString duration(std::int64_t microseconds, const QLocale& locale = QLocale());

/// "µg", "kcal".
[[nodiscard]] QString unitText(quantity::Unit unit);
/// "kg DM", "1000 kcal", "day", "kg body mass" …
[[nodiscard]] QString basisText(quantity::Basis basis);
/// "g/kg DM", "kcal a day".
[[nodiscard]] QString unitPerBasis(quantity::Unit unit, quantity::Basis basis);

}  // namespace tarebowl::ui
