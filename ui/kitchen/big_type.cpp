// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/big_type.h"

#include "ui/shared/number_reading.h"

#include <QCoreApplication>
#include <QFont>
#include <QLineEdit>

namespace tarebowl::ui {

void setPoints(QWidget* widget, int points, bool bold) {
  QFont font = widget->font();
  font.setPointSize(points);
  font.setBold(bold);
  widget->setFont(font);
}

QLineEdit* makeWeightField() {
  constexpr int kWidth = 260;
  auto* field = new QLineEdit;
  setPoints(field, kFieldPoints, true);
  field->setAccessibleName(QCoreApplication::translate("Kitchen", "Weight in g"));
  field->setAlignment(Qt::AlignRight);
  field->setMaximumWidth(kWidth);
  return field;
}

std::optional<quantity::Grams> typedGrams(const QString& text) {
  const auto number = readSigned(text);
  return number ? std::optional(quantity::Grams(*number)) : std::nullopt;
}

std::optional<LeftAndLost> typedLeftAndLost(const QString& text) {
  const auto part = [](const QString& typed, std::optional<quantity::Grams>& into) {
    if (typed.trimmed().isEmpty()) return true;
    into = typedGrams(typed);
    return into && *into >= quantity::Grams(0);
  };
  LeftAndLost amounts;
  const bool isWhole = part(text.section(QLatin1Char('+'), 0, 0), amounts.left) &&
                       part(text.section(QLatin1Char('+'), 1), amounts.lost);
  return isWhole ? std::optional(amounts) : std::nullopt;
}

}  // namespace tarebowl::ui
