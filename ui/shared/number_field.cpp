// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/number_field.h"

#include "ui/shared/format.h"
#include "ui/shared/number_reading.h"

#include <QLineEdit>
#include <QToolTip>

#include <algorithm>

namespace tarebowl::ui {
namespace {

/// A letter that may stand in a number that is not finished or not understood yet.
bool mayStand(QChar letter, bool negative) {
  constexpr QChar kOthers[] = {u'.', u',', u'\'', QChar(0x2019)};
  return letter.isDigit() || letter.isSpace() || (negative && letter == QChar(u'-')) ||
         std::find(std::begin(kOthers), std::end(kOthers), letter) != std::end(kOthers);
}

}  // namespace

NumberField::NumberField(QWidget* parent) : QDoubleSpinBox(parent) {
  // The line edit tells of an edit before the field takes the number.
  connect(lineEdit(), &QLineEdit::textEdited, this, [this] {
    if (!isTyping_) before_ = value();
    isTyping_ = true;
  });
  connect(this, &QAbstractSpinBox::editingFinished, this, [this] { isTyping_ = false; });
}

/// Without what stands before and after the number.
QString NumberField::numberIn(const QString& text) const {
  QString number = text;
  if (!prefix().isEmpty() && number.startsWith(prefix())) number.remove(0, prefix().size());
  if (!suffix().isEmpty() && number.endsWith(suffix())) number.chop(suffix().size());
  return number;
}

QValidator::State NumberField::validate(QString& text, int& /*pos*/) const {
  if (!specialValueText().isEmpty() && text == specialValueText()) return QValidator::Acceptable;
  const QString typed = numberIn(text);
  const bool negative = minimum() < 0.0;
  if (!std::all_of(typed.begin(), typed.end(), [&](QChar letter) {
        return mayStand(letter, negative) || locale().decimalPoint() == letter;
      }))
    return QValidator::Invalid;
  const QString whole = prefix() + typed + suffix();
  if (text != whole) text = whole;
  const auto number = readSigned(typed, locale());
  const bool counts =
      number && *number >= minimum() && *number <= maximum() && typedDecimals(typed, locale()) <= decimals();
  return counts ? QValidator::Acceptable : QValidator::Intermediate;
}

double NumberField::valueFromText(const QString& text) const {
  if (!specialValueText().isEmpty() && text == specialValueText()) return minimum();
  return readSigned(numberIn(text), locale()).value_or(value());
}

void NumberField::fixup(QString& text) const {
  const QString typed = numberIn(text).trimmed();
  const double back = isTyping_ ? before_ : value();
  text = back == minimum() && !specialValueText().isEmpty() ? specialValueText()
                                                            : prefix() + textFromValue(back) + suffix();
  if (typed.isEmpty()) return;  // nothing was typed: nothing is refused
  const QString why = whyNot(typed);
  QToolTip::showText(mapToGlobal(rect().bottomLeft()), why, parentWidget());
  emit refused(why);
}

QString NumberField::whyNot(const QString& typed) const {
  const auto number = readSigned(typed, locale());
  const QString advice = thousandsAdvice(typed, locale());
  if (!number) return advice.isEmpty() ? tr("“%1” is no number.").arg(typed) : advice;
  if (*number < minimum() || *number > maximum())
    return tr("“%1” is not between %2 and %3.")
        .arg(typed, stated(std::max(minimum(), 0.0), locale()), stated(maximum(), locale()));
  if (decimals() == 0) return tr("“%1” is no whole number, and only whole numbers count here.").arg(typed);
  return tr("“%1” is finer than what counts here: %n digit(s) after the decimal mark.", nullptr, decimals())
      .arg(typed);
}

}  // namespace tarebowl::ui
