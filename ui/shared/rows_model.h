// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QColor>
#include <QStringList>

#include <vector>

namespace tarebowl::ui {

/// Rows of text that are worked out elsewhere and only shown: observations, targets, a look-back.
class RowsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  struct Row {
    QStringList cells{};
    QString tip{};
    QColor ink{};  ///< of the first cell; not valid: as other text
  };
  /// numbers: columns that stand at the right.
  RowsModel(QStringList titles, std::vector<int> numbers, QObject* parent = nullptr);

  void show(std::vector<Row> rows);
  [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QStringList titles_;
  std::vector<int> numbers_;
  std::vector<Row> rows_;
};

}  // namespace tarebowl::ui
