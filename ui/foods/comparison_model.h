// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/foods/food_text.h"

#include <QAbstractTableModel>

#include <vector>

namespace tarebowl::ui {

/// Several foods side by side: a row for every nutrient that one of them has, a column for each.
class ComparisonModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;
  enum Role { UnknownRole = Qt::UserRole + 1, HighestRole };

  struct Compared {
    QString name;  ///< and its form on a line below
    food::Composition composition;
  };
  void show(std::vector<Compared> foods);
  void setBasis(CompositionBasis basis);
  void setEnergy(EnergyUnit energy);
  [[nodiscard]] QModelIndex indexOf(food::NutrientId nutrient, int food) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  [[nodiscard]] std::optional<double> amount(food::NutrientId nutrient, std::size_t food) const;
  [[nodiscard]] bool isHighest(food::NutrientId nutrient, std::size_t food) const;

  CompositionBasis basis_ = CompositionBasis::DryMatterKg;
  EnergyUnit energy_ = EnergyUnit::Kilocalorie;
  std::vector<Compared> foods_;
  std::vector<food::BasisFacts> facts_;
  std::vector<food::NutrientId> nutrients_;
};

}  // namespace tarebowl::ui
