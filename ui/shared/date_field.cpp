// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/date_field.h"

#include "ui/shared/date_text.h"

#include <QRegularExpression>

namespace tarebowl::ui {
namespace {

/// The locale's day in figures, with all figures of the year: two of them are a guess at the century.
QString formatInFigures(const QLocale& locale) {
  static const QRegularExpression kYear(QStringLiteral("y+"));
  return locale.dateFormat(QLocale::ShortFormat).replace(kYear, QStringLiteral("yyyy"));
}

/// What may become such a day: figures and what parts them.
bool isInFigures(const QString& text) {
  static const QRegularExpression kFigures(QStringLiteral("^[0-9./ -]*$"));
  return kFigures.match(text).hasMatch();
}

}  // namespace

std::optional<QDate> readDate(const QString& text, const QLocale& locale) {
  QDate day = QDate::fromString(text.trimmed(), Qt::ISODate);
  if (!day.isValid()) day = locale.toDate(text.trimmed(), formatInFigures(locale));
  return day.isValid() ? std::optional(day) : std::nullopt;
}

DateField::DateField(QWidget* parent) : QDateEdit(parent) {
  setCalendarPopup(true);
  setDisplayFormat(dateFormat());
}

QValidator::State DateField::validate(QString& text, int& pos) const {
  if (const auto day = readDate(text, locale()))
    return *day >= minimumDate() && *day <= maximumDate() ? QValidator::Acceptable : QValidator::Intermediate;
  if (isInFigures(text)) return QValidator::Intermediate;
  return QDateEdit::validate(text, pos);
}

QDateTime DateField::dateTimeFromText(const QString& text) const {
  if (const auto day = readDate(text, locale())) return day->startOfDay();
  return QDateEdit::dateTimeFromText(text);
}

}  // namespace tarebowl::ui
