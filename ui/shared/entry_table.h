// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace tarebowl::ui {

/// A table to type into: Tab goes from cell to cell and, after the last one, on to the next control; with
/// Ctrl it leaves the table at once. (Qt's own begins anew, and the keys never come out.)
class EntryTable : public QTableView {
  Q_OBJECT
 public:
  using QTableView::QTableView;

 protected:
  void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
  bool focusNextPrevChild(bool next) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] bool isAtEnd(bool next);
};

}  // namespace tarebowl::ui
