// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Of every room, on the sample: what a screen reader says, what F1 says, and that the keys alone reach it.
#include "tests/ui/frame/every_control.h"

#include "tests/ui/frame/sample_in_window.h"
#include "ui/diets/balance_pane.h"
#include "ui/frame/explanation.h"
#include "ui/shared/balance_ladder.h"

#include <QApplication>
#include <QWhatsThis>

#include <gmock/gmock.h>

#include <algorithm>
#include <array>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

class EveryControlTest : public SampleInWindow, public ::testing::WithParamInterface<int> {
 protected:
  EveryControlTest() { goTo(GetParam()); }
};

TEST_P(EveryControlTest, HasANameForAScreenReader) {
  expectNames(window);
}

TEST_P(EveryControlTest, SaysItsValueToAScreenReader) {
  expectValues(window);
}

TEST_P(EveryControlTest, IsExplainedByF1) {
  expectExplanations(window);
}

TEST_P(EveryControlTest, IsReachedByTheKeysAlone) {
  expectReachedByKeys(window);
}

TEST_P(EveryControlTest, IsNotCutOnASmallScreenNorAtTwiceItsSize) {
  expectNothingCut(window, kSmallScreen);
  expectNothingCut(window, kTwiceAsLarge);
}

std::string roomName(const ::testing::TestParamInfo<int>& room) {
  return std::array{"Today", "Foods", "Animals", "Diets", "Kitchen", "Intake", "Health"}.at(
      static_cast<std::size_t>(room.param - 1));
}

INSTANTIATE_TEST_SUITE_P(Rooms, EveryControlTest, ::testing::Range(1, 8), roomName);

class HelpInWindowTest : public SampleInWindow {};

TEST_F(HelpInWindowTest, F1SaysWhatTheControlUnderTheHandIsAndWhereItsNumberComesFrom) {
  goTo(4);
  auto* ladder = window.diets().balancePane().findChild<BalanceLadder*>();
  ladder->setFocus();
  QTest::keyClick(ladder, Qt::Key_F1);
  const auto shown = QApplication::topLevelWidgets();
  const bool isShown = std::any_of(shown.begin(), shown.end(), [](const QWidget* widget) {
    return widget->isVisible() && widget->inherits("QWhatsThat");
  });
  EXPECT_TRUE(isShown);
  QWhatsThis::hideText();
  const std::string said = explanationOf(*ladder).toStdString();
  EXPECT_THAT(said, HasSubstr("Balance ladder"));
  EXPECT_THAT(said, HasSubstr("grams of each food times its composition"));
  EXPECT_THAT(
      said,
      HasSubstr(
          ladder->currentIndex().data(Qt::ToolTipRole).toString().toHtmlEscaped().left(20).toStdString()));
}

}  // namespace
}  // namespace tarebowl::ui
