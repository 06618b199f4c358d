// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>

#include <optional>

/// Numbers as people type them. Comma and point are both the decimal mark, whichever the locale writes, and
/// nothing sets thousands apart: a comma never becomes a thousand. Where the mark is not the locale's own and
/// three digits follow it ("1.500" in German, "1,500" in English), a person may mean either, and nothing is
/// read.
namespace tarebowl::ui {

/// A number of at least zero; nothing for anything else.
[[nodiscard]] std::optional<double> readNumber(const QString& text, const QLocale& locale = QLocale());
/// Also below zero.
[[nodiscard]] std::optional<double> readSigned(const QString& text, const QLocale& locale = QLocale());

/// Digits after the decimal mark, as typed: "1,50" has two.
[[nodiscard]] int typedDecimals(const QString& text, const QLocale& locale = QLocale());

/// What to type instead of "1.500" or "1 500"; empty where nothing in the text sets thousands apart.
[[nodiscard]] QString thousandsAdvice(const QString& text, const QLocale& locale = QLocale());
/// That, or else what the field itself has to say of what cannot be read.
[[nodiscard]] QString thousandsAdviceOr(const QString& text, const QString& own);

}  // namespace tarebowl::ui
