// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/rotation_pane.h"

#include "tests/ui/diets/example_rotation.h"
#include "tests/ui/shared/named_controls.h"
#include "ui/diets/rotation_calendar.h"
#include "ui/diets/rotation_form.h"
#include "ui/diets/rotation_side.h"
#include "ui/shared/paths.h"

#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tarebowl::ui {
namespace {

using quantity::Grams;
using ::testing::HasSubstr;

constexpr std::size_t kCrickets = 1;

class RotationPaneTest : public ::testing::Test {
 protected:
  RotationPaneTest() : pane(alone.planner, dialogs()) {
    pane.setTitle(QStringLiteral("Evening bowl, version 1"));
    pane.resize(1200, 700);
    pane.show();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&pane));
  }
  Dialogs dialogs() {
    Dialogs made;
    made.sheetToSave = [this](QWidget*, const std::filesystem::path&) { return std::optional(saveAs); };
    return made;
  }
  void plan() {
    alone.plan(quantity::parseDate("2026-11-30").value());
    pane.calendar().setFocus();
    pane.calendar().goTo({kCrickets, 2});
  }
  void press(const QString& words) {
    for (auto* button : pane.findChildren<QPushButton*>())
      if (button->isVisible() && button->text() == words) return QTest::mouseClick(button, Qt::LeftButton);
    ADD_FAILURE() << "no button says " << words.toStdString();
  }
  [[nodiscard]] Grams shown(int day) const { return alone.planner.view()->gramsOn(day, kCrickets); }

  const ExampleDiets example;
  PlannerAlone alone{example};
  QTemporaryDir folder;
  std::filesystem::path saveAs = toPath(folder.filePath(QStringLiteral("week.html")));
  RotationPane pane;
};

TEST_F(RotationPaneTest, DaysArePlannedByAForm) {
  press(QStringLiteral("Plan days…"));
  EXPECT_TRUE(pane.form().isVisible());
  expectNamedControls(pane);
  press(QStringLiteral("Plan"));
  alone.settle();
  ASSERT_NE(alone.planner.view(), nullptr);
  EXPECT_EQ(alone.planner.view()->kept().from, exampleToday());
  EXPECT_FALSE(pane.form().isVisible());
  EXPECT_TRUE(pane.calendar().isVisible());
  press(QStringLiteral("Plan days…"));
  EXPECT_EQ(pane.form().from(), quantity::parseDate("2026-12-02").value()) << "after those that are planned";
}

// 768 pixels less the bars of the desktop and of the window.
TEST_F(RotationPaneTest, FitsTheSmallestScreenWithItsPlanAndWithItsForm) {
  constexpr int kRoom = 700;
  plan();
  EXPECT_LE(pane.minimumSizeHint().height(), kRoom);
  press(QStringLiteral("Plan days…"));
  EXPECT_LE(pane.minimumSizeHint().height(), kRoom);
}

TEST_F(RotationPaneTest, KeysMoveAFoodAndLockACell) {
  plan();
  QTest::keyClick(&pane.calendar(), Qt::Key_Right, Qt::AltModifier);
  alone.settle();
  EXPECT_EQ(shown(2), Grams(0));
  EXPECT_EQ(shown(3), Grams(12));
  EXPECT_EQ(pane.calendar().cell(), (CalendarCell{kCrickets, 3})) << "the hand goes with it";
  EXPECT_TRUE(alone.planner.view()->isLocked(3, kCrickets));
  QTest::keyClick(&pane.calendar(), Qt::Key_L);
  alone.settle();
  EXPECT_FALSE(alone.planner.view()->isLocked(3, kCrickets));
  QTest::keyClick(&pane.calendar(), Qt::Key_Delete);
  EXPECT_TRUE(QTest::qWaitFor([this] { return shown(3) == Grams(0); }, 5'000));
  alone.settle();
  QTest::keyClick(&pane, Qt::Key_Z, Qt::ControlModifier);
  alone.settle();
  EXPECT_EQ(shown(3), Grams(12));
}

TEST_F(RotationPaneTest, ANumberThatIsTypedIsKept) {
  plan();
  QTest::keyClick(&pane.calendar(), Qt::Key_F2);
  auto* editor = pane.calendar().findChild<QDoubleSpinBox*>();
  ASSERT_NE(editor, nullptr);
  editor->setValue(6.5);
  QTest::keyClick(editor, Qt::Key_Return);
  EXPECT_TRUE(QTest::qWaitFor([this] { return shown(2) == Grams(6.5); }, 5'000));
  alone.settle();
  EXPECT_TRUE(alone.planner.view()->isLocked(2, kCrickets));
}

TEST_F(RotationPaneTest, SaysHowTheDaysStandAndHowOneDoes) {
  plan();
  EXPECT_THAT(pane.side().sentences().toStdString(), HasSubstr("Over the 7 days"));
  press(QStringLiteral("Wed 2 Dec"));
  EXPECT_THAT(pane.side().sentences().toStdString(), HasSubstr("day's"));
  expectNamedControls(pane);
}

TEST_F(RotationPaneTest, IsWrittenAsAPage) {
  plan();
  QTest::keyClick(&pane, Qt::Key_S, Qt::ControlModifier);
  QFile page(toText(saveAs));
  ASSERT_TRUE(page.open(QIODevice::ReadOnly));
  EXPECT_THAT(page.readAll().toStdString(), HasSubstr("Crickets"));
}

TEST_F(RotationPaneTest, EscapeGoesBack) {
  const QSignalSpy dismissed(&pane, &RotationPane::dismissed);
  QTest::keyClick(&pane, Qt::Key_Escape);
  EXPECT_EQ(dismissed.size(), 1);
}

TEST_F(RotationPaneTest, SaysWhyNothingCameOfIt) {
  plan();
  alone.planner.setGrams(kCrickets, 0, Grams(95));
  alone.settle();
  EXPECT_TRUE(pane.banner().isVisible());
  EXPECT_THAT(pane.banner().text().toStdString(), HasSubstr("Nothing was changed"));
}

}  // namespace
}  // namespace tarebowl::ui
