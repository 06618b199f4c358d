// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/icons.h"

#include "tests/source_dir.h"

#include <QDir>
#include <QImage>
#include <QPixmap>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

bool drawsSomething(const QIcon& icon) {
  const QImage image = icon.pixmap(24, 24).toImage();
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x)
      if (qAlpha(image.pixel(x, y)) > 0) return true;
  return false;
}

TEST(Icons, OfTheFolderAreAllInTheProgramAndDrawSomething) {
  const QDir folder(QStringLiteral(TAREBOWL_SOURCE_DIR "/resources/icons"));
  const QStringList drawings = folder.entryList({QStringLiteral("*.svg")});
  ASSERT_GT(drawings.size(), 5);
  for (const QString& file : drawings)
    EXPECT_TRUE(drawsSomething(icon(file.chopped(4), Qt::black))) << file.toStdString();
}

TEST(Icons, TakeTheInkTheyAreGiven) {
  const QImage white = icon(QStringLiteral("lock"), Qt::white).pixmap(24, 24).toImage();
  for (int y = 0; y < white.height(); ++y)
    for (int x = 0; x < white.width(); ++x) {
      const bool isInk = qAlpha(white.pixel(x, y)) == 255;
      EXPECT_TRUE(!isInk || qRed(white.pixel(x, y)) == 255);
    }
}

TEST(Icons, ThatDoNotExistAreEmpty) {
  EXPECT_FALSE(drawsSomething(icon(QStringLiteral("no-such"), Qt::black)));
}

}  // namespace
}  // namespace tarebowl::ui
