// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/frame/every_control.h"

#include "ui/frame/explanation.h"
#include "ui/frame/room_stage.h"
#include "ui/shared/elided_label.h"

#include <QAbstractButton>
#include <QAbstractItemModel>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QButtonGroup>
#include <QLabel>
#include <QList>
#include <QRect>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTableView>
#include <QTest>
#include <QTextDocument>

#include <gtest/gtest.h>

#include <set>
#include <string>
#include <utility>

namespace tarebowl::ui {
namespace {

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

QList<QWidget*> focusableIn(const QWidget& window) {
  QList<QWidget*> found;
  for (QWidget* widget : window.findChildren<QWidget*>())
    if (widget->isVisible() && !isTextToCopy(*widget) && widget->window() == &window &&
        widget->focusPolicy() != Qt::NoFocus && !isInnerPart(*widget))
      found << widget;
  return found;
}

/// What a label or a button shows, without keys ("  (P)") and signs ("…", "▾").
QString wordsOn(const QWidget& widget) {
  static const QRegularExpression kKeys(QStringLiteral("  .*$|^\\w  "));
  static const QRegularExpression kSigns(QStringLiteral("[…▾&*]"));
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
    return button->text().remove(kKeys).remove(kSigns).simplified();
  const auto* label = qobject_cast<const QLabel*>(&widget);
  if (label == nullptr) return {};
  if (label->buddy() != nullptr) return label->text().remove(QLatin1Char('&')).simplified();
  if (!Qt::mightBeRichText(label->text())) return label->text().simplified();
  QTextDocument document;
  document.setHtml(label->text());
  return document.toPlainText().simplified();
}

void expectWordsInNames(const QWidget& window) {
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    const QString words = widget->isVisible() ? wordsOn(*widget) : QString();
    if (words.isEmpty()) continue;
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr) << describe(*widget);
    EXPECT_TRUE(seen->text(QAccessible::Name)
                    .simplified()
                    .remove(QLatin1Char('&'))
                    .contains(words, Qt::CaseInsensitive))
        << describe(*widget) << " shows " << words.toStdString() << " and is called "
        << seen->text(QAccessible::Name).toStdString();
  }
}

/// Its buttons are reached by the arrows from the one that is chosen.
bool isOneOfAChoice(const QWidget& widget) {
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  if (button == nullptr) return false;
  const bool isInGroup = button->group() != nullptr && button->group()->exclusive();
  return isInGroup || (button->isCheckable() && button->autoExclusive());
}

/// What a table or list edits or shows within itself, it scrolls.
bool isInTable(const QWidget& widget) {
  for (const QWidget* part = widget.parentWidget(); part != nullptr; part = part->parentWidget())
    if (qobject_cast<const QAbstractItemView*>(part) != nullptr) return true;
  return false;
}

std::string rectText(const QRect& rect) {
  return std::to_string(rect.x()) + "," + std::to_string(rect.y()) + " " + std::to_string(rect.width()) +
         "x" + std::to_string(rect.height());
}

void expectWholeText(const QWidget& widget) {
  const auto* label = qobject_cast<const QLabel*>(&widget);
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  if (label != nullptr && !label->text().isEmpty() && qobject_cast<const ElidedLabel*>(&widget) == nullptr) {
    const int needed = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
    EXPECT_GE(label->height(), needed)
        << describe(widget) << " is cut below: " << label->text().toStdString();
    EXPECT_GE(label->width(), label->minimumSizeHint().width())
        << describe(widget) << " is cut at the side: " << label->text().toStdString();
  }
  if (button != nullptr && !button->text().isEmpty()) {
    EXPECT_GE(button->width(), button->minimumSizeHint().width())
        << describe(widget) << " is cut at the side";
    const int needed = button->hasHeightForWidth() ? button->heightForWidth(button->width())
                                                   : button->minimumSizeHint().height();
    EXPECT_GE(button->height(), needed) << describe(widget) << " is cut below";
  }
}

void expectCells(const QTableView& table, QAccessibleInterface& seen) {
  QAccessibleTableInterface* cells = seen.tableInterface();
  ASSERT_NE(cells, nullptr) << describe(table);
  for (int column = 0; column < table.model()->columnCount(); ++column) {
    if (table.isColumnHidden(column)) continue;
    const QModelIndex shown = table.model()->index(0, column);
    QAccessibleInterface* cell = cells->cellAt(0, column);
    ASSERT_NE(cell, nullptr) << describe(table) << column;
    const QString text = shown.data(Qt::AccessibleTextRole).toString();
    EXPECT_EQ(cell->text(QAccessible::Name), text.isEmpty() ? shown.data().toString() : text)
        << describe(table) << column;
  }
}

}  // namespace

void expectNames(const QWidget& window) {
  expectWordsInNames(window);
  for (QWidget* widget : focusableIn(window)) {
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr) << describe(*widget);
    EXPECT_FALSE(seen->text(QAccessible::Name).trimmed().isEmpty()) << describe(*widget);
    EXPECT_TRUE(seen->state().focusable || !widget->isEnabled()) << describe(*widget);
  }
}

void expectValues(const QWidget& window) {
  for (QWidget* widget : focusableIn(window)) {
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(widget);
    ASSERT_NE(seen, nullptr) << describe(*widget);
    if (const auto* number = qobject_cast<const QAbstractSpinBox*>(widget)) {
      EXPECT_TRUE(number->text().contains(seen->text(QAccessible::Value))) << describe(*widget);
    }
    const auto* table = qobject_cast<const QTableView*>(widget);
    if (table != nullptr && table->model() != nullptr && table->model()->rowCount() > 0)
      expectCells(*table, *seen);
  }
}

void expectExplanations(const QWidget& window) {
  for (const QWidget* widget : focusableIn(window))
    EXPECT_FALSE(explanationOf(*widget).isEmpty()) << describe(*widget);
}

void expectReachedByKeys(QWidget& window) {
  constexpr int kMostSteps = 1000;
  window.activateWindow();
  std::set<const QWidget*> reached;
  std::string way;
  bool hasLeft = false;
  QWidget* const first = QApplication::focusWidget();
  ASSERT_NE(first, nullptr);
  for (int step = 0; step < kMostSteps; ++step) {
    QWidget* now = QApplication::focusWidget();
    ASSERT_NE(now, nullptr);
    way += nameOf(*now).toStdString() + " | ";
    EXPECT_FALSE(now->visibleRegion().isEmpty())
        << "the focus is out of sight on " << describe(*now) << ", at "
        << rectText(QRect(now->mapTo(&window, QPoint()), now->size()));
    for (const QWidget* part = now; part != nullptr; part = part->parentWidget()) reached.insert(part);
    QTest::keyClick(now, Qt::Key_Tab);
    if (QApplication::focusWidget() == now) QTest::keyClick(now, Qt::Key_Tab, Qt::ControlModifier);
    hasLeft = hasLeft || QApplication::focusWidget() != first;  // a day has parts, which Tab goes through
    if (hasLeft && QApplication::focusWidget() == first) break;
  }
  for (const QWidget* widget : focusableIn(window)) {
    if (!widget->isEnabled() || isOneOfAChoice(*widget)) continue;
    if ((widget->focusPolicy() & Qt::TabFocus) == 0) {
      ADD_FAILURE() << "the Tab key passes by " << describe(*widget);
    } else {
      EXPECT_TRUE(reached.contains(widget))
          << "the keys do not reach " << describe(*widget) << " on their way: " << way;
    }
  }
}

void expectNoScrollingSideways(const QWidget& window, QSize size) {
  for (const auto* stage : window.findChildren<RoomStage*>())
    for (const auto* place : stage->findChildren<QScrollArea*>(Qt::FindDirectChildrenOnly)) {
      if (!place->isVisible()) continue;
      EXPECT_LE(place->widget()->width(), place->viewport()->width())
          << describe(*place->widget()) << " is scrolled sideways at " << size.width() << "x"
          << size.height();
    }
}

/// Layouts, and what follows from them: until twice nothing has moved.
void waitUntilLaidOut(const QWidget& window) {
  const auto places = [&window] {
    QList<QRect> found;
    for (const QWidget* widget : window.findChildren<QWidget*>())
      if (widget->isVisible()) found << widget->geometry();
    return found;
  };
  QList<QRect> before;
  int still = 0;
  EXPECT_TRUE(QTest::qWaitFor([&] {
    QTest::qWait(25);
    QList<QRect> now = places();
    still = now == before ? still + 1 : 0;
    before = std::move(now);
    return still == 2;
  }));
}

void expectNothingCut(QWidget& window, QSize size) {
  window.resize(size);
  waitUntilLaidOut(window);
  EXPECT_EQ(window.size(), size) << "the window does not become as small";
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->window() != &window || isInnerPart(*widget)) continue;
    expectWholeText(*widget);
    const QWidget* place = widget->parentWidget();
    const bool isScrolled = qobject_cast<const QAbstractScrollArea*>(place->parentWidget()) != nullptr;
    if (isScrolled || isInTable(*widget)) continue;
    EXPECT_TRUE(place->rect().contains(widget->geometry()))
        << describe(*widget) << " sticks out at " << size.width() << "x" << size.height() << ": "
        << rectText(widget->geometry()) << " of " << rectText(place->rect());
  }
  expectNoScrollingSideways(window, size);
}

}  // namespace tarebowl::ui
