// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/preferences.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

TEST(Preferences, RememberTheScaleOfABenchAndThatItWasLetGo) {
  const QTemporaryDir folder;
  const Preferences preferences(folder.filePath(QStringLiteral("tarebowl.ini")));
  EXPECT_EQ(preferences.scale(), ScaleSettings{}) << "nobody has chosen one";
  const ScaleSettings ounces{
      .port = QStringLiteral("ttyUSB0"), .speed = 2400, .unit = intake::ScaleUnit::Ounce};
  preferences.setScale(ounces);
  EXPECT_EQ(Preferences(folder.filePath(QStringLiteral("tarebowl.ini"))).scale(), ounces);
  preferences.setScale({});
  EXPECT_EQ(preferences.scale(), ScaleSettings{});
}

}  // namespace
}  // namespace tarebowl::ui
