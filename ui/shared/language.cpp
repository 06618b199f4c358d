// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>

#include <algorithm>
#include <array>

// Resources of a static library are found only when asked for; the macro must stand outside of any namespace.
static void loadLanguages() {
  Q_INIT_RESOURCE(languages);
}

namespace tarebowl::ui {
namespace {

constexpr std::array<Language, 4> kLanguages{
    {{"en", "English"}, {"de", "Deutsch"}, {"fr", "Français"}, {"es", "Español"}}};

bool isOurs(const QString& code) {
  return std::any_of(kLanguages.begin(), kLanguages.end(),
                     [&](const Language& language) { return code == QLatin1String(language.code); });
}

/// The language that somebody chose, as a country writes it. The program's English is that of Great Britain.
QLocale plainLocale(const QString& code) {
  if (code == QLatin1String("en")) return {QLocale::English, QLocale::UnitedKingdom};
  return QLocale(code);
}

}  // namespace

std::span<const Language> languages() {
  return kLanguages;
}

QString languageAmong(const QStringList& wanted) {
  for (const QString& name : wanted) {
    const QString code = name.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
    if (isOurs(code)) return code;
  }
  return QLatin1String(kLanguages.front().code);
}

QLocale localeOf(const QString& chosen, const QLocale& own) {
  QLocale locale = own;
  if (isOurs(chosen) && plainLocale(chosen).language() != own.language()) locale = plainLocale(chosen);
  locale.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::RejectGroupSeparator);
  return locale;
}

SpokenLanguage::SpokenLanguage(const QString& chosen)
    : code_(isOurs(chosen) ? chosen : languageAmong(QLocale::system().uiLanguages())) {
  loadLanguages();
  QLocale::setDefault(localeOf(chosen, QLocale::system()));
  if (qt_.load(QStringLiteral("qtbase_") + code_, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    QCoreApplication::installTranslator(&qt_);
  if (own_.load(QStringLiteral(":/languages/tarebowl_") + code_)) QCoreApplication::installTranslator(&own_);
}

SpokenLanguage::~SpokenLanguage() {
  QCoreApplication::removeTranslator(&own_);
  QCoreApplication::removeTranslator(&qt_);
  QLocale::setDefault(before_);
}

}  // namespace tarebowl::ui
