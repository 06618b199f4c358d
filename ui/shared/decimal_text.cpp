// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/decimal_text.h"

#include <cmath>

namespace tarebowl::ui {

QString decimal(double value, int decimals, const QLocale& locale) {
  if (!std::isfinite(value)) return QStringLiteral("?");
  // -0 comes out of differences and reads like an error.
  const double scale = std::pow(10.0, decimals);
  if (std::round(value * scale) == 0.0) value = 0.0;
  QLocale ungrouped = locale;  // what sets thousands apart in one language is the decimal mark of another
  ungrouped.setNumberOptions(QLocale::OmitGroupSeparator);
  return ungrouped.toString(value, 'f', decimals);
}

QString countText(std::int64_t many, const QLocale& locale) {
  return decimal(static_cast<double>(many), 0, locale);
}

}  // namespace tarebowl::ui
