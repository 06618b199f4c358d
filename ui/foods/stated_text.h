// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/composition.h"
#include "ui/shared/number_reading.h"

#include <QLocale>
#include <QString>

#include <optional>

namespace tarebowl::ui {

/// An amount as a report prints it: "12.4", "< 0.05", "≥ 33", "tr", "n.d.".
struct StatedText {
  double amount = 0.0;
  food::Qualifier qualifier = food::Qualifier::Equal;
  bool operator==(const StatedText&) const = default;
};

/// Nothing where it is no amount, or a negative one.
[[nodiscard]] std::optional<StatedText> readStated(const QString& text, const QLocale& locale = QLocale());
[[nodiscard]] QString writeStated(const StatedText& stated, const QLocale& locale = QLocale());

}  // namespace tarebowl::ui
