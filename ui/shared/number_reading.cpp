// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/number_reading.h"

#include "ui/shared/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace tarebowl::ui {
namespace {

struct Numbers {
  Q_DECLARE_TR_FUNCTIONS(Numbers)
};

constexpr QChar kPoint(u'.');
constexpr QChar kComma(u',');
constexpr QChar kMinus(u'-');
constexpr qsizetype kThousand = 3;  // digits of a group

/// What was typed, in plain digits; the locale's own decimal mark is a point, the other one a comma.
QString inPlainDigits(const QString& text, const QLocale& locale) {
  const QString own = locale.decimalPoint();
  QString plain;
  for (const QChar letter : text.trimmed()) {
    if (letter.isDigit())
      plain += QChar(u'0' + letter.digitValue());
    else if (letter == QChar(0x2212))
      plain += kMinus;
    else if (own == letter)
      plain += kPoint;
    else
      plain += letter == kPoint || letter == kComma ? kComma : letter;
  }
  return plain;
}

struct Parts {
  bool isNegative = false;
  QString whole{};
  QString fraction{};
  bool isOwnMark = true;
};

bool isDigits(const QString& text) {
  return std::all_of(text.begin(), text.end(), [](QChar letter) { return letter.isDigit(); });
}

std::optional<Parts> partsOf(QString plain) {
  Parts parts;
  if (plain.startsWith(kMinus) || plain.startsWith(QChar(u'+'))) {
    parts.isNegative = plain.front() == kMinus;
    plain.remove(0, 1);
  }
  qsizetype mark = plain.indexOf(kPoint);
  if (mark < 0) {
    mark = plain.indexOf(kComma);
    parts.isOwnMark = mark < 0;
  }
  parts.whole = mark < 0 ? plain : plain.left(mark);
  parts.fraction = mark < 0 ? QString() : plain.mid(mark + 1);
  if (!isDigits(parts.whole) || !isDigits(parts.fraction)) return std::nullopt;
  return parts.whole.isEmpty() && parts.fraction.isEmpty() ? std::nullopt : std::optional(parts);
}

/// A mark that is not the locale's own, where one that sets thousands apart would stand.
bool isTwofold(const Parts& parts) {
  return !parts.isOwnMark && parts.fraction.size() == kThousand && !parts.whole.isEmpty() &&
         parts.whole.size() <= kThousand && parts.whole.front() != QChar(u'0');
}

double valueOf(const Parts& parts) {
  const double size = QLocale::c().toDouble(QChar(u'0') + parts.whole + kPoint + parts.fraction);
  return parts.isNegative ? -size : size;
}

/// Without what sets thousands apart: spaces, apostrophes, and marks before the last one where they differ.
QString withoutGrouping(QString plain) {
  plain.removeIf(
      [](QChar letter) { return letter.isSpace() || letter == QChar(u'\'') || letter == QChar(0x2019); });
  const qsizetype last = std::max(plain.lastIndexOf(kPoint), plain.lastIndexOf(kComma));
  if (last < 0) return plain;
  const QChar mark = plain[last];
  if (plain.count(mark) > 1) return plain.remove(mark);
  return plain.remove(mark == kPoint ? kComma : kPoint);
}

}  // namespace

std::optional<double> readSigned(const QString& text, const QLocale& locale) {
  const auto parts = partsOf(inPlainDigits(text, locale));
  return parts && !isTwofold(*parts) ? std::optional(valueOf(*parts)) : std::nullopt;
}

std::optional<double> readNumber(const QString& text, const QLocale& locale) {
  const auto number = readSigned(text, locale);
  return number && *number >= 0.0 ? number : std::nullopt;
}

int typedDecimals(const QString& text, const QLocale& locale) {
  const auto parts = partsOf(inPlainDigits(text, locale));
  return parts ? static_cast<int>(parts->fraction.size()) : 0;
}

QString thousandsAdvice(const QString& text, const QLocale& locale) {
  const QString plain = inPlainDigits(text, locale);
  const auto parts = partsOf(plain);
  if (parts && !isTwofold(*parts)) return {};
  if (parts) {
    const double asThousands = QLocale::c().toDouble(parts->whole + parts->fraction);
    return Numbers::tr("“%1” may mean %2 or %3: type one of these, for nothing sets thousands apart here.")
        .arg(text.trimmed(), stated(asThousands, locale), stated(valueOf(*parts), locale));
  }
  const auto meant = partsOf(withoutGrouping(plain));
  if (!meant) return {};
  return Numbers::tr("“%1” sets thousands apart: type it without, %2.")
      .arg(text.trimmed(), stated(valueOf(*meant), locale));
}

QString thousandsAdviceOr(const QString& text, const QString& own) {
  const QString advice = thousandsAdvice(text);
  return advice.isEmpty() ? own : advice;
}

}  // namespace tarebowl::ui
