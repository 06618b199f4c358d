// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTableView>

namespace tarebowl::ui {

/// A table as all rooms have them: rows with a rule under each, no grid, Ctrl+C copies it. Cells are painted
/// from the model's text, alignment and ink; a cell that can be edited is underlined softly.
class PlainTable : public QTableView {
  Q_OBJECT
 public:
  explicit PlainTable(const QString& accessibleName, QWidget* parent = nullptr);
  void setModel(QAbstractItemModel* model) override;
  /// This column takes what room the others leave.
  void setWideColumn(int column);
  [[nodiscard]] QSize sizeHint() const override;

 private:
  void fitColumns();
  [[nodiscard]] bool holdsNumbers(int column) const;
  void resizeEvent(QResizeEvent* event) override;

  int wide_ = 0;
};

}  // namespace tarebowl::ui
