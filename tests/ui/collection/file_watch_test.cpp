// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Another window, a command or a copying hand: whoever changes the collection's file, the window hears of it.
#include "ui/collection/file_watch.h"

#include "ui/shared/paths.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

constexpr int kPatienceMs = 30'000;

class FileWatchTest : public ::testing::Test {
 protected:
  FileWatchTest() {
    write(file, "begun");
    watch.watch(toPath(file));
  }
  static void write(const QString& name, const char* text) {
    QFile out(name);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly | QIODevice::Append));
    out.write(text);
  }
  [[nodiscard]] bool hears() {
    const bool heard = stirred.count() > 0 || stirred.wait(kPatienceMs);
    stirred.clear();
    return heard;
  }

  QTemporaryDir folder;
  QString file = folder.filePath(QStringLiteral("zoo.tarebowl"));
  FileWatch watch;
  QSignalSpy stirred{&watch, &FileWatch::stirred};
};

TEST_F(FileWatchTest, IsToldByTheSystemAndDoesNotLookByItself) {
  EXPECT_TRUE(watch.isTold());
}

TEST_F(FileWatchTest, HearsOfAWriteToTheFile) {
  write(file, "more");
  EXPECT_TRUE(hears());
}

TEST_F(FileWatchTest, HearsOfALogThatAppearsAndOfWhatIsWrittenToIt) {
  write(file + QStringLiteral("-wal"), "a");
  EXPECT_TRUE(hears());
  write(file + QStringLiteral("-wal"), "b");
  EXPECT_TRUE(hears());
}

TEST_F(FileWatchTest, HearsOfAFileThatTakesItsPlaceAndOfWhatIsWrittenToThat) {
  const QString other = folder.filePath(QStringLiteral("other"));
  write(other, "another");
  ASSERT_TRUE(QFile::remove(file));
  ASSERT_TRUE(QFile::rename(other, file));
  EXPECT_TRUE(hears());
  write(file, "more");
  EXPECT_TRUE(hears());
}

TEST_F(FileWatchTest, HearsNothingOnceItIsStopped) {
  watch.stop();
  write(file, "more");
  EXPECT_FALSE(stirred.wait(500));
}

TEST_F(FileWatchTest, TellsAgainWhereNobodyCouldLook) {
  watch.tellAgain();
  EXPECT_TRUE(hears());
}

}  // namespace
}  // namespace tarebowl::ui
