// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/threaded_application.h"
#include "ui/shared/theme.h"

#include <QLocale>

#include <gtest/gtest.h>

/// No display is needed, and every machine reads numbers in the same way.
int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  ::testing::InitGoogleTest(&argc, argv);
  tarebowl::ui::ThreadedApplication application(argc, argv);
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  const bool isDark = qEnvironmentVariable("TAREBOWL_THEME") == QLatin1String("dark");
  tarebowl::ui::applyTheme(application,
                           isDark ? tarebowl::ui::ThemeChoice::Dark : tarebowl::ui::ThemeChoice::Light);
  return RUN_ALL_TESTS();
}
