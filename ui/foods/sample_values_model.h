// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/sample.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// The values of one report while it is typed in: a line each, and an empty line at the end for the next.
class SampleValuesModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Nutrient, Amount, Unit, Basis, Sd, Count, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  void show(const std::vector<food::SampleValue>& values);
  /// The values, or nothing and complaint() where a line cannot be read.
  [[nodiscard]] std::optional<std::vector<food::SampleValue>> values() const;
  [[nodiscard]] QString complaint() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  void removeRow(int row);

 private:
  /// A line as it is typed.
  struct Line {
    QString nutrient{};
    QString amount{};
    QString sd{};
    QString count{};
    quantity::Basis basis = quantity::Basis::AsFed;
    std::optional<food::Reported> reported{};
    [[nodiscard]] bool isEmpty() const { return nutrient.isEmpty() && amount.isEmpty(); }
  };
  struct Read {
    std::optional<food::SampleValue> value;
    QString complaint;
  };
  [[nodiscard]] static Read read(const Line& line);
  void keepEmptyLine();

  std::vector<Line> lines_;
};

/// By tagname, name or a laboratory's word for it.
[[nodiscard]] std::optional<food::NutrientId> nutrientCalled(const QString& text);

}  // namespace tarebowl::ui
