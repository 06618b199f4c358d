// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QVariant>

#include <optional>
#include <vector>

namespace tarebowl::ui {

class DietDesk;

/// The foods of the diet on the desk, as a table whose grams, locks and limits can be edited.
class IngredientModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Food, GramsADay, Lock, Min, Max, ShareBar, Share, Cost, ColumnCount };
  enum Role {
    NumberRole = Qt::UserRole + 1,  ///< the cell as a number in the unit shown; nothing where there is none
    NameRole,                       ///< of a food, without what RemarkRole says
    RemarkRole,                     ///< beside a food's name: its form
    UnitRole,
    StepRole,     ///< of the spin box, in the unit shown
    DecimalsRole  ///< of the spin box
  };

  explicit IngredientModel(DietDesk& desk, QObject* parent = nullptr);

  /// Grams of the whole group instead of one animal. Shares do not change.
  void setPerGroup(bool perGroup);
  [[nodiscard]] bool isPerGroup() const { return perGroup_; }
  [[nodiscard]] bool hasCosts() const;
  [[nodiscard]] DietDesk& desk() const { return desk_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  /// Grams and limits as numbers in the unit shown (no valid number: no maximum), a lock as
  /// Qt::CheckStateRole.
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 private:
  void refresh();
  void reset();
  [[nodiscard]] double animals() const;
  [[nodiscard]] std::optional<double> number(std::size_t food, int column) const;
  [[nodiscard]] QString text(std::size_t food, int column) const;
  [[nodiscard]] QString description(std::size_t food, int column) const;
  [[nodiscard]] QString foodDescription(std::size_t food) const;
  bool setLimits(std::size_t food, int column, const QVariant& value);

  DietDesk& desk_;
  bool perGroup_ = false;
  std::vector<std::optional<double>> shares_;
};

}  // namespace tarebowl::ui
