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

  [[nodiscard]] std::optional<FoodId> shownFood() const { return desk_.shownId(); }
  /// The nutrient of a row or of the row above a sample.
  [[nodiscard]] std::optional<food::NutrientId> nutrientAt(const QModelIndex& index) const;
  [[nodiscard]] std::optional<SampleId> sampleAt(const QModelIndex& index) const;
  [[nodiscard]] QModelIndex indexOf(food::NutrientId nutrient) const;

  [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  [[nodiscard]] QModelIndex parent(const QModelIndex& index) const override;
  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  /// What one sample says of the row's nutrient.
  struct Statement {
    std::size_t sample = 0;  ///< index among the page's samples
    std::optional<food::LeftOutBecause> leftOut{};
    std::optional<food::NutrientValue> value{};  ///< as fed; nothing where it cannot be put so
  };
  struct Row {
    food::DerivedValue derived;  ///< used and leftOut both empty where nothing is known
    bool known = false;
    std::vector<Statement> statements{};
  };
  void rebuild();
  [[nodiscard]] bool has(food::NutrientId nutrient) const;
  void addCooked();
  [[nodiscard]] Row rowOf(const food::DerivedValue& derived) const;
  [[nodiscard]] QString nutrientText(const Row& row, int column) const;
  [[nodiscard]] QString statementText(const Row& row, const Statement& statement, int column) const;
  [[nodiscard]] std::optional<double> onBasis(const Row& row,
                                              std::optional<quantity::AsFedContent> content) const;

  FoodDesk& desk_;
  CompositionBasis basis_ = CompositionBasis::AsFed100g;
  food::BasisFacts facts_;
  std::vector<Row> rows_;
};

/// Proximates, energy, fibre and on: the order in which nutrients are read.
[[nodiscard]] bool isShownBefore(food::NutrientId a, food::NutrientId b);

/// The nutrients that are shown even where nothing is known of them: unknown is not zero, and not silence.
[[nodiscard]] const std::vector<food::NutrientId>& alwaysShown();

}  // namespace tarebowl::ui
