// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/number_reading.h"

#include <cmath>

namespace tarebowl::ui {

std::optional<double> readNumber(const QString& text, const QLocale& locale) {
  bool read = false;
  double number = locale.toDouble(text.trimmed(), &read);
  if (!read) number = QLocale::c().toDouble(text.trimmed(), &read);
  if (!read || !std::isfinite(number) || number < 0.0) return std::nullopt;
  return number;
}

}  // namespace tarebowl::ui
