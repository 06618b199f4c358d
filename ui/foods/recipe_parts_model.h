// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/food/recipe.h"

#include <QAbstractTableModel>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// The parts of a house mix while their grams are typed in: food, grams weighed in, and its share of the mix.
class RecipePartsModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Food, Grams, Share, ColumnCount };
  struct Part {
    std::string code{};  ///< food::Food::code
    QString name{};
    QString grams{};  ///< as typed; empty while nobody has said
    bool operator==(const Part&) const = default;
  };
  using QAbstractTableModel::QAbstractTableModel;

  void show(std::vector<Part> parts);
  /// A part without grams yet; the row of it, or of the one that is there already.
  int add(const std::string& code, const QString& name);
  void remove(int row);
  /// Nothing where the grams of a part cannot be read; see complaint().
  [[nodiscard]] std::optional<std::vector<food::RecipePart>> parts() const;
  [[nodiscard]] QString complaint() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 signals:
  /// A hand changed a part.
  void edited();

 private:
  [[nodiscard]] static std::optional<double> gramsOf(const Part& part);
  [[nodiscard]] QString shareText(const Part& part) const;

  std::vector<Part> parts_{};
};

}  // namespace tarebowl::ui
