// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the groups of the invented sample really ate, looked at over days and years, and yesterday's bowls.
#include "ui/intake/intake_room.h"

#include "core/transfer/sample_import.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/intake/food_bands_chart.h"
#include "ui/intake/group_choice.h"
#include "ui/intake/value_chart.h"
#include "ui/intake/yesterday_page.h"
#include "ui/kitchen/leftover_pane.h"
#include "ui/shared/paths.h"
#include "ui/shared/plain_table.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

quantity::Date sampleDay() {
  return quantity::parseDate("2026-11-25").value();
}

class IntakeRoomTest : public ::testing::Test {
 protected:
  IntakeRoomTest() {
    file = toPath(folder.path()) / "brackenmere.tarebowl";
    const store::Author author{"Keeper", "2026-11-25T07:30:00Z"};
    {
      store::Collection made = store::Collection::create(file, author);
      transfer::importSample(made, std::filesystem::path(TAREBOWL_SOURCE_DIR) / "sample-data", author);
    }
    dialogs.sheetToSave = [this](QWidget*, const std::filesystem::path&) { return page; };
    room = std::make_unique<IntakeRoom>(collection, dialogs, &sampleDay);
    collection.setPerson(QStringLiteral("Keeper"));
    room->resize(1290, 740);
    room->show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(room.get()));
    collection.open({.name = QStringLiteral("brackenmere"), .file = file, .invented = true},
                    [file = file] { return store::Collection::open(file, "2026-11-25T07:30:00Z"); });
    settle();
  }
  void settle() {
    EXPECT_TRUE(QTest::qWaitFor([this] { return collection.isIdle() && !room->desk().isReading(); }, 30'000));
  }
  void show(const char* group) {
    room->desk().show(group);
    settle();
  }
  void press(const char* text) {
    for (auto* button : room->findChildren<QAbstractButton*>())
      if (button->isVisible() && button->text() == QString::fromUtf8(text)) {
        button->click();
        return settle();
      }
    ADD_FAILURE() << "no button says " << text;
  }
  std::string said() {
    QCoreApplication::processEvents();  // lines that came just now are shown then
    QString text;
    for (auto* label : room->findChildren<QLabel*>())
      if (label->isVisible()) text += label->text() + QLatin1Char('\n');
    return text.toStdString();
  }
  [[nodiscard]] const transfer::IntakeTrend& trend() const { return room->desk().trend().value(); }

  QTemporaryDir folder;
  std::filesystem::path file;
  std::filesystem::path page;
  Dialogs dialogs;
  OpenCollection collection;
  std::unique_ptr<IntakeRoom> room;
};

TEST_F(IntakeRoomTest, ShowsTheLastSixtyDaysOfTheFirstGroupThatIsFed) {
  EXPECT_EQ(room->desk().span().days(), 60);
  EXPECT_EQ(room->desk().span().until, QDate(2026, 11, 24));
  EXPECT_THAT(said(), HasSubstr("Invented sample"));
  EXPECT_THAT(said(), HasSubstr("missing, not zero"));
  EXPECT_GT(room->table().model()->rowCount(), 3);
}

// Second planted story: ten days in August on which the dragons leave their greens.
TEST_F(IntakeRoomTest, TellsThatCalciumFellWhenTheDragonsLeftTheirGreens) {
  show("dragons");
  press("All");
  EXPECT_EQ(room->desk().span().days(), 120);
  EXPECT_THAT(said(), HasSubstr("fell"));
  EXPECT_THAT(said(), HasSubstr("median of"));
  EXPECT_THAT(said(), HasSubstr("house rule"));
}

TEST_F(IntakeRoomTest, IsMovedAndLookedAtCloserByKeys) {
  show("lemurs");
  press("All");
  room->foods().setFocus();
  QTest::keyClick(&room->foods(), Qt::Key_Plus);
  settle();
  EXPECT_EQ(room->desk().span().days(), 60);
  const QDate from = room->desk().span().from;
  QTest::keyClick(&room->foods(), Qt::Key_Left);
  settle();
  EXPECT_EQ(room->desk().span().from, from.addDays(-15));
  EXPECT_EQ(room->value().span(), room->desk().span()) << "all charts move together";
  QTest::keyClick(&room->foods(), Qt::Key_0);
  settle();
  EXPECT_EQ(room->desk().span().days(), 120);
}

TEST_F(IntakeRoomTest, FollowsWhateverIsChosen) {
  show("lemurs");
  room->desk().follow(food::nutrients::protein());
  settle();
  ASSERT_FALSE(trend().followed.targets.empty());
  EXPECT_EQ(trend().followed.targets.front().nutrient, food::nutrients::protein());
  const ValueLine line = valueLineOf(trend(), transfer::kSubjectLine);
  EXPECT_EQ(line.points.size(), line.eaten.size());
}

TEST_F(IntakeRoomTest, CopiesAndWritesWhatIsShown) {
  show("fennecs");
  press("Copy");
  const QStringList lines = QApplication::clipboard()->text().trimmed().split(QLatin1Char('\n'));
  EXPECT_EQ(lines.size(), 61) << "titles and a row a day";
  page = toPath(folder.path()) / "intake.csv";
  press("CSV…");
  QFile csv(toText(page));
  ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
  EXPECT_EQ(csv.readAll().count('\n'), 61);
  page = toPath(folder.path()) / "intake.pdf";
  press("PDF…");
  QFile pdf(toText(page));
  ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
  EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
  page = toPath(folder.path()) / "intake.png";
  press("PNG…");
  EXPECT_GT(QImage(toText(page)).height(), 400);
}

TEST_F(IntakeRoomTest, WritesTheDaysInSightAsAStudy) {
  show("fennecs");
  for (const char* name : {"study.pdf", "study.xlsx"}) {
    page = toPath(folder.path()) / name;
    press("Study…");
    QFile written(toText(page));
    ASSERT_TRUE(written.open(QIODevice::ReadOnly)) << name;
    EXPECT_GT(written.size(), 1000) << name;
  }
}

TEST_F(IntakeRoomTest, AFileOfAnotherKindIsToldInTheRoom) {
  page = toPath(folder.path()) / "intake.doc";
  press("CSV…");
  EXPECT_THAT(said(), HasSubstr(".png, .pdf or .csv"));
}

TEST_F(IntakeRoomTest, AGroupIsChosenWithinItsSection) {
  auto* groups = room->findChild<GroupChoice*>();
  const int all = groups->groups().count();
  groups->sections().setCurrentIndex(1);
  emit groups->sections().activated(1);
  EXPECT_LT(groups->groups().count(), all);
  EXPECT_GT(groups->groups().count(), 0);
}

TEST_F(IntakeRoomTest, YesterdaysBowlsAreFilledInByKeysInTheOrderOfTheSheet) {
  room->findChild<QTabWidget*>()->setCurrentIndex(1);
  settle();
  KitchenDesk& desk = room->yesterday().desk();
  ASSERT_TRUE(QTest::qWaitFor([&] { return desk.sheet().has_value() && collection.isIdle(); }));
  EXPECT_EQ(desk.day(), quantity::parseDate("2026-11-24").value());
  EXPECT_EQ(desk.task(), KitchenDesk::Task::Leftovers);
  EXPECT_TRUE(room->yesterday().pane().field().hasFocus());
}

TEST_F(IntakeRoomTest, EveryControlHasAName) {
  expectNamedControls(*room);
}

}  // namespace
}  // namespace tarebowl::ui
