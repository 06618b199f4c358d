// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/run.h"

#include "core/diet/solve.h"
#include "ui/frame/main_window.h"
#include "ui/shared/language.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QScreen>
#include <QStringList>

#include <clocale>

namespace tarebowl::ui {
namespace {

ThemeChoice themeNamed(const QString& name) {
  if (name == QLatin1String("light")) return ThemeChoice::Light;
  if (name == QLatin1String("dark")) return ThemeChoice::Dark;
  return ThemeChoice::System;
}

ThemeChoice themeChoice(const QStringList& arguments) {
  const QString option = QStringLiteral("--theme");
  for (int i = 1; i < arguments.size(); ++i) {
    if (arguments[i].startsWith(option + QLatin1Char('=')))
      return themeNamed(arguments[i].mid(option.size() + 1));
    if (arguments[i] == option && i + 1 < arguments.size()) return themeNamed(arguments[i + 1]);
  }
  return themeNamed(qEnvironmentVariable("TAREBOWL_THEME"));
}

/// As it was left; at first all of a screen that is hardly larger than the window: its frame takes room too.
void showOnScreen(MainWindow& window) {
  if (window.takeItsPlace()) return window.show();
  constexpr QSize kFrame{16, 40};
  const QSize room = window.screen()->availableSize() - kFrame;
  if (room.width() < window.width() || room.height() < window.height())
    window.showMaximized();
  else
    window.show();
}

}  // namespace

int run(int argc, char** argv, const WhatToOpen& what) {
  QApplication application(argc, argv);
  // Qt has taken the person's locale for C as well; what writes and reads files there counts on a point.
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setApplicationName(QStringLiteral("Tarebowl"));
  const SpokenLanguage language(Preferences().language());
  ThemeChoice theme = themeChoice(QApplication::arguments());
  if (theme == ThemeChoice::System) theme = Preferences().theme();
  applyTheme(application, theme);
  QGuiApplication::setDesktopFileName(QStringLiteral("org.tarebowl.Tarebowl"));
  MainWindow window(&diet::solve, systemDialogs());
  if (what.sample)
    window.files().openSample();
  else
    window.open(what.file);
  showOnScreen(window);
  return QApplication::exec();
}

}  // namespace tarebowl::ui
