// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/rows_model.h"

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

RowsModel::RowsModel(QStringList titles, std::vector<int> numbers, QObject* parent)
    : QAbstractTableModel(parent), titles_(std::move(titles)), numbers_(std::move(numbers)) {}

void RowsModel::show(std::vector<Row> rows) {
  beginResetModel();
  rows_ = std::move(rows);
  endResetModel();
}

int RowsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RowsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(titles_.size());
}

QVariant RowsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
      return row.cells.value(index.column());
    case Qt::ToolTipRole:
      return row.tip.isEmpty() ? QVariant() : row.tip;
    case Qt::ForegroundRole:
      return row.ink.isValid() && index.column() == 0 ? QVariant(row.ink) : QVariant();
    case Qt::TextAlignmentRole:
      return static_cast<int>(
          (std::ranges::find(numbers_, index.column()) != numbers_.end() ? Qt::AlignRight : Qt::AlignLeft) |
          Qt::AlignVCenter);
    default:
      return {};
  }
}

QVariant RowsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::DisplayRole) return titles_.value(section);
  if (role == Qt::TextAlignmentRole)
    return static_cast<int>(std::ranges::find(numbers_, section) != numbers_.end() ? Qt::AlignRight
                                                                                   : Qt::AlignLeft);
  return {};
}

}  // namespace tarebowl::ui
