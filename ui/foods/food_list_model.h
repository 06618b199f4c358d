// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// The foods of the list: those that were looked for, in the order that was asked for. Figures are read when
/// a row comes into sight.
class FoodListModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Name, Group, Water, Protein, Calcium, CalciumToPhosphorus, ColumnCount };
  enum Role { RemarkRole = Qt::UserRole + 1, InStockRole };

  explicit FoodListModel(FoodDesk& desk, QObject* parent = nullptr);

  void look(const QString& text);
  [[nodiscard]] FoodId idAt(int row) const;
  /// -1 where it is not in the list.
  [[nodiscard]] int rowOf(FoodId id) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  void sort(int column, Qt::SortOrder order) override;

 private:
  void rebuild();
  void takeFigures();
  [[nodiscard]] std::vector<int> inOrder() const;
  [[nodiscard]] const food::FoodLine& line(int row) const;

  FoodDesk& desk_;
  QString text_;
  int sortColumn_ = Name;
  Qt::SortOrder sortOrder_ = Qt::AscendingOrder;
  std::vector<int> rows_;  // places in the desk's list
};

/// A food's figure as the column says it: water % as fed, protein % of DM, calcium g/kg DM, Ca:P.
[[nodiscard]] std::optional<double> figureOf(const food::Composition& composition, int column);

}  // namespace tarebowl::ui
