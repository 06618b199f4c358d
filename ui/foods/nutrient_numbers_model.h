// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/nutrient.h"

#include <QAbstractTableModel>

#include <optional>
#include <utility>
#include <vector>

namespace tarebowl::ui {

/// A nutrient and a number on each line while they are typed in, and an empty line at the end for the next:
/// how often it is analysed, how much of it cooking leaves. A line whose nutrient is emptied goes.
class NutrientNumbersModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Nutrient, Number, ColumnCount };
  /// What the number is and what it may be.
  struct Meaning {
    QString title{};
    QString hint{};  ///< "a whole number from 1 to 120"
    double least = 0.0;
    double most = 0.0;
    bool whole = false;
    double first = 1.0;  ///< what a new line begins with
  };
  using Numbers = std::vector<std::pair<food::NutrientId, double>>;

  explicit NutrientNumbersModel(Meaning meaning, QObject* parent = nullptr);

  void show(const Numbers& numbers);
  /// Nothing where a line cannot be read; see complaint().
  [[nodiscard]] std::optional<Numbers> numbers() const;
  [[nodiscard]] QString complaint() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 signals:
  /// A hand changed a line.
  void edited();

 private:
  struct Line {
    QString nutrient{};
    QString number{};
  };
  [[nodiscard]] QString complaintOf(const Line& line) const;
  void dropEmptied(int row);
  void keepEmptyLine();

  Meaning meaning_;
  std::vector<Line> lines_{Line{}};
};

}  // namespace tarebowl::ui
