// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/stated_text.h"

#include <utility>

namespace tarebowl::ui {
namespace {

using food::Qualifier;

constexpr std::pair<const char*, Qualifier> kSigns[] = {{">=", Qualifier::AtLeast},
                                                        {"≥", Qualifier::AtLeast},
                                                        {"<=", Qualifier::AtMost},
                                                        {"≤", Qualifier::AtMost},
                                                        {"<", Qualifier::BelowQuantification},
                                                        {">", Qualifier::Above}};

QString signOf(Qualifier qualifier) {
  switch (qualifier) {
    case Qualifier::AtLeast:
      return QStringLiteral("≥ ");
    case Qualifier::AtMost:
      return QStringLiteral("≤ ");
    case Qualifier::BelowQuantification:
    case Qualifier::Below:
      return QStringLiteral("< ");
    case Qualifier::Above:
      return QStringLiteral("> ");
    default:
      return {};
  }
}

}  // namespace

std::optional<StatedText> readStated(const QString& text, const QLocale& locale) {
  const QString word = text.trimmed().toLower();
  if (word == QLatin1String("tr") || word == QLatin1String("tr.") || word == QLatin1String("trace"))
    return StatedText{0.0, Qualifier::Trace};
  if (word == QLatin1String("nd") || word == QLatin1String("n.d."))
    return StatedText{0.0, Qualifier::NotDetected};
  Qualifier qualifier = Qualifier::Equal;
  QString rest = word;
  for (const auto& [sign, meaning] : kSigns) {
    const QString printed = QString::fromUtf8(sign);
    if (!word.startsWith(printed)) continue;
    qualifier = meaning;
    rest = word.mid(printed.size());
    break;
  }
  const auto amount = readNumber(rest, locale);
  if (!amount) return std::nullopt;
  return StatedText{*amount, qualifier};
}

QString writeStated(const StatedText& stated, const QLocale& locale) {
  if (stated.qualifier == Qualifier::Trace) return QStringLiteral("tr");
  if (stated.qualifier == Qualifier::NotDetected) return QStringLiteral("n.d.");
  return signOf(stated.qualifier) + locale.toString(stated.amount, 'g', 8);
}

}  // namespace tarebowl::ui
