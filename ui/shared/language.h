// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <QTranslator>

#include <span>

namespace tarebowl::ui {

/// A language that the window speaks: its code, and its name in itself.
struct Language {
  const char* code;
  const char* name;
};

/// English first, which the program is written in.
[[nodiscard]] std::span<const Language> languages();

/// The first of a person's languages ("de-AT", "en") that the window speaks; English where it speaks none.
[[nodiscard]] QString languageAmong(const QStringList& wanted);

/// In which numbers and days are written: the person's own locale where it is of this language or where none
/// was chosen, for a language alone does not say how a country writes. Nothing sets thousands apart in it.
[[nodiscard]] QLocale localeOf(const QString& chosen, const QLocale& own);

/// The window speaks a language as long as this lives: what is made in the meantime says its words in it, and
/// QLocale() is `localeOf` it. Qt's own words follow where Qt's translations are installed.
class SpokenLanguage {
 public:
  /// chosen: a code of `languages`; empty: the first of the system's that the window speaks.
  explicit SpokenLanguage(const QString& chosen);
  ~SpokenLanguage();
  SpokenLanguage(const SpokenLanguage&) = delete;
  SpokenLanguage& operator=(const SpokenLanguage&) = delete;

  [[nodiscard]] const QString& code() const { return code_; }

 private:
  QString code_;
  QLocale before_;
  QTranslator qt_;
  QTranslator own_;
};

}  // namespace tarebowl::ui
