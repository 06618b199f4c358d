// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/date_field.h"

#include "ui/shared/date_text.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSignalBlocker>

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

/// Qt's field takes each key for the part that the cursor is in; a day typed over all of it goes past that.
void DateField::keyPressEvent(QKeyEvent* event) {
  const QString keys = event->text();
  const bool isOverAll = !lineEdit()->text().isEmpty() && lineEdit()->selectedText() == lineEdit()->text();
  if (isOverAll && !keys.isEmpty() && keys.front().isDigit()) isTypedWhole_ = true;
  const bool edits = (!keys.isEmpty() && keys.front().isPrint()) || event->key() == Qt::Key_Backspace;
  if (!isTypedWhole_ || !edits) {
    isTypedWhole_ = false;
    return QDateEdit::keyPressEvent(event);
  }
  const QSignalBlocker quiet(lineEdit());
  lineEdit()->event(event);
}

void DateField::focusOutEvent(QFocusEvent* event) {
  if (isTypedWhole_) interpretText();
  isTypedWhole_ = false;
  QDateEdit::focusOutEvent(event);
}

QDateTime DateField::dateTimeFromText(const QString& text) const {
  if (const auto day = readDate(text, locale())) return day->startOfDay();
  return QDateEdit::dateTimeFromText(text);
}

}  // namespace tarebowl::ui
