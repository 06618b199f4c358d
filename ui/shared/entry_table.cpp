// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/entry_table.h"

#include <QGuiApplication>
#include <QKeyEvent>

#include <utility>

namespace tarebowl::ui {

/// Where the next cell would be the one that it began with.
bool EntryTable::isAtEnd(bool next) {
  const QModelIndex here = currentIndex();
  const QModelIndex there = moveCursor(next ? MoveNext : MovePrevious, Qt::NoModifier);
  if (!here.isValid() || !there.isValid()) return true;
  const auto place = [](const QModelIndex& index) { return std::pair(index.row(), index.column()); };
  return next ? place(there) <= place(here) : place(there) >= place(here);
}

void EntryTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
  const bool next = hint == QAbstractItemDelegate::EditNextItem;
  const bool goesOn = next || hint == QAbstractItemDelegate::EditPreviousItem;
  const bool leaves =
      goesOn && (isAtEnd(next) || QGuiApplication::keyboardModifiers().testFlag(Qt::ControlModifier));
  QTableView::closeEditor(editor, leaves ? QAbstractItemDelegate::NoHint : hint);
  if (leaves) QWidget::focusNextPrevChild(next);
}

bool EntryTable::focusNextPrevChild(bool next) {
  if (tabKeyNavigation() && !isAtEnd(next)) return QTableView::focusNextPrevChild(next);
  return QWidget::focusNextPrevChild(next);
}

void EntryTable::keyPressEvent(QKeyEvent* event) {
  const bool isTab = event->key() == Qt::Key_Tab || event->key() == Qt::Key_Backtab;
  if (!isTab || !event->modifiers().testFlag(Qt::ControlModifier)) return QTableView::keyPressEvent(event);
  QWidget::focusNextPrevChild(event->key() == Qt::Key_Tab);
}

}  // namespace tarebowl::ui
