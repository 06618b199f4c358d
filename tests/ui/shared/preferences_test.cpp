// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/preferences.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <string>

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

TEST(Preferences, KeepTheCollectionsThatWereOpenTheLastOneFirstAndEachOnce) {
  const QTemporaryDir folder;
  const Preferences preferences(folder.filePath(QStringLiteral("tarebowl.ini")));
  EXPECT_TRUE(preferences.recentCollections().empty());
  for (const char* name : {"/a.tarebowl", "/b.tarebowl", "/a.tarebowl"}) preferences.setLastCollection(name);
  EXPECT_EQ(preferences.recentCollections(),
            (std::vector<std::filesystem::path>{"/a.tarebowl", "/b.tarebowl"}));
  for (int number = 0; number < 20; ++number)
    preferences.setLastCollection("/" + std::to_string(number) + ".tarebowl");
  EXPECT_EQ(preferences.recentCollections().size(), 8U);
  EXPECT_EQ(preferences.recentCollections().front(), "/19.tarebowl");
}

TEST(Preferences, KeepAnAddressOnAServerAsItIs) {
  const QTemporaryDir folder;
  const Preferences preferences(folder.filePath(QStringLiteral("tarebowl.ini")));
  preferences.setLastCollection("postgresql://ann@server/zoo");
  EXPECT_EQ(preferences.recentCollections().front(), "postgresql://ann@server/zoo");
}

TEST(Preferences, KeepHowTheWindowWasLeft) {
  const QTemporaryDir folder;
  const Preferences preferences(folder.filePath(QStringLiteral("tarebowl.ini")));
  EXPECT_FALSE(preferences.seat());
  preferences.setSeat({.geometry = QByteArray("somewhere"), .room = 5});
  ASSERT_TRUE(preferences.seat());
  EXPECT_EQ(preferences.seat()->geometry, QByteArray("somewhere"));
  EXPECT_EQ(preferences.seat()->room, 5);
}

}  // namespace
}  // namespace tarebowl::ui
