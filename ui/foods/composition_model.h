// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/foods/food_text.h"

#include <QAbstractItemModel>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// What one food is made of: a row for every nutrient, and under it what each sample says.
class CompositionModel : public QAbstractItemModel {
  Q_OBJECT
 public:
  enum Column { Nutrient, Value, Scatter, Origin, ColumnCount };
  enum Role {
    UnknownRole = Qt::UserRole + 1,  ///< nothing is known of this nutrient
    LeftOutRole,                     ///< a sample's statement that does not count
  };

  explicit CompositionModel(FoodDesk& desk, QObject* parent = nullptr);

  void setBasis(CompositionBasis basis);
  [[nodiscard]] CompositionBasis basis() const { return basis_; }

  /// The nutrient of a row or of the row above a sample.
  [[nodiscard]] std::optional<food::NutrientId> nutrientAt(const QModelIndex& index) const;
  [[nodiscard]] std::optional<SampleKey> sampleAt(const QModelIndex& index) const;
  [[nodiscard]] QModelIndex indexOf(food::NutrientId nutrient) const;

  [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  [[nodiscard]] QModelIndex parent(const QModelIndex& index) const override;
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void rebuild();
  [[nodiscard]] QString nutrientText(const DerivedValue& row, int column) const;
  [[nodiscard]] QString statementText(const DerivedValue& row, const Statement& statement, int column) const;
  [[nodiscard]] std::optional<double> onBasis(std::optional<quantity::AsFedContent> content) const;
  [[nodiscard]] const food::Sample* sampleOf(const Statement& statement) const;

  FoodDesk& desk_;
  CompositionBasis basis_ = CompositionBasis::AsFed100g;
  food::BasisFacts facts_;
  std::vector<DerivedValue> rows_;
};

/// The nutrients that are shown even where nothing is known of them: unknown is not zero, and not silence.
[[nodiscard]] const std::vector<food::NutrientId>& alwaysShown();

}  // namespace tarebowl::ui
