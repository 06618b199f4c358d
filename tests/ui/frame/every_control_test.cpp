// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Of every room, on the sample: what a screen reader says, what F1 says, and that the keys alone reach it.
#include "tests/ui/frame/sample_in_window.h"
#include "ui/diets/balance_pane.h"
#include "ui/frame/explanation.h"
#include "ui/shared/balance_ladder.h"

#include <QAbstractButton>
#include <QAbstractItemModel>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QButtonGroup>
#include <QLabel>
#include <QTableView>
#include <QWhatsThis>

#include <gmock/gmock.h>

#include <algorithm>
#include <array>
#include <set>

namespace tarebowl::ui {
namespace {

using ::testing::HasSubstr;

/// Inner parts of Qt's own controls, which speak through their owners.
bool isInnerPart(const QWidget& widget) {
  const QWidget* owner = widget.parentWidget();
  return widget.inherits("QScrollBar") || widget.inherits("QSplitterHandle") ||
         widget.inherits("QHeaderView") ||
         (owner != nullptr && (owner->inherits("QLineEdit") || owner->inherits("QAbstractSpinBox") ||
                               owner->inherits("QComboBox") || owner->inherits("QTabBar")));
}

/// Text that the mouse can mark is no control: a screen reader reads it where it stands.
bool isTextToCopy(const QWidget& widget) {
  return qobject_cast<const QLabel*>(&widget) != nullptr && (widget.focusPolicy() & Qt::TabFocus) == 0;
}

std::string describe(const QWidget& widget) {
  std::string text = widget.metaObject()->className();
  text += " “" + nameOf(widget).toStdString() + "” in";
  for (const QWidget* part = widget.parentWidget(); part != nullptr; part = part->parentWidget())
    text += std::string(" ") + part->metaObject()->className();
  return text;
}

class EveryControlTest : public SampleInWindow, public ::testing::WithParamInterface<int> {
 protected:
  EveryControlTest() { goTo(GetParam()); }

  [[nodiscard]] QList<QWidget*> focusable() const {
    QList<QWidget*> found;
    for (QWidget* widget : window.findChildren<QWidget*>())
      if (widget->isVisible() && !isTextToCopy(*widget) && widget->window() == &window &&
          widget->focusPolicy() != Qt::NoFocus && !isInnerPart(*widget))
        found << widget;
    return found;
  }
};

TEST_P(EveryControlTest, HasANameForAScreenReader) {
  for (QWidget* widget : focusable()) {
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr) << describe(*widget);
    EXPECT_FALSE(seen->text(QAccessible::Name).trimmed().isEmpty()) << describe(*widget);
    EXPECT_TRUE(seen->state().focusable || !widget->isEnabled()) << describe(*widget);
  }
}

/// What stands in a field or a cell is read out as it is shown.
TEST_P(EveryControlTest, SaysItsValueToAScreenReader) {
  for (QWidget* widget : focusable()) {
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr) << describe(*widget);
    if (const auto* number = qobject_cast<const QAbstractSpinBox*>(widget)) {
      EXPECT_TRUE(number->text().contains(seen->text(QAccessible::Value))) << describe(*widget);
    }
    const auto* table = qobject_cast<const QTableView*>(widget);
    if (table == nullptr || table->model()->rowCount() == 0) continue;
    QAccessibleTableInterface* cells = seen->tableInterface();
    ASSERT_NE(cells, nullptr) << describe(*widget);
    for (int column = 0; column < table->model()->columnCount(); ++column) {
      if (table->isColumnHidden(column)) continue;
      const QModelIndex shown = table->model()->index(0, column);
      QAccessibleInterface* cell = cells->cellAt(0, column);
      ASSERT_NE(cell, nullptr) << describe(*widget) << column;
      const QString text = shown.data(Qt::AccessibleTextRole).toString();
      EXPECT_EQ(cell->text(QAccessible::Name), text.isEmpty() ? shown.data().toString() : text)
          << describe(*widget) << column;
    }
  }
}

/// Its own words or those of the card or pane that it stands in.
TEST_P(EveryControlTest, IsExplainedByF1) {
  for (const QWidget* widget : focusable())
    EXPECT_FALSE(explanationOf(*widget).isEmpty()) << describe(*widget);
}

/// Tab goes from control to control; within a row of buttons of which one is chosen, the arrows do.
TEST_P(EveryControlTest, IsReachedByTheKeysAlone) {
  window.activateWindow();
  std::set<const QWidget*> reached;
  std::string way;
  QWidget* first = QApplication::focusWidget();
  ASSERT_NE(first, nullptr);
  for (int step = 0; step < 400; ++step) {
    QWidget* now = QApplication::focusWidget();
    ASSERT_NE(now, nullptr);
    way += nameOf(*now).toStdString() + " | ";
    for (const QWidget* part = now; part != nullptr; part = part->parentWidget()) reached.insert(part);
    QTest::keyClick(now, Qt::Key_Tab);
    if (QApplication::focusWidget() == now) QTest::keyClick(now, Qt::Key_Tab, Qt::ControlModifier);
    if (QApplication::focusWidget() == first) break;
  }
  for (const QWidget* widget : focusable()) {
    if (!widget->isEnabled()) continue;
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    const bool isInChoice = button != nullptr && button->isCheckable() && button->autoExclusive();
    const bool isInGroup = button != nullptr && button->group() != nullptr && button->group()->exclusive();
    if (isInChoice || isInGroup) continue;
    if ((widget->focusPolicy() & Qt::TabFocus) == 0) {
      ADD_FAILURE() << "the Tab key passes by " << describe(*widget);
    } else {
      EXPECT_TRUE(reached.contains(widget))
          << "the keys do not reach " << describe(*widget) << " on their way: " << way;
    }
  }
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
