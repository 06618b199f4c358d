// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/energy_derivation.h"

#include <QAbstractTableModel>

#include <optional>

namespace tarebowl::ui {

/// The derivation of an energy need, a line for each step, so that a person can check it by hand. Exponent,
/// energy at 1 kg and factors are edited in place.
class EnergyModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Step, Number, UpTo, Gives, Origin, ColumnCount };

  explicit EnergyModel(QObject* parent = nullptr);

  struct State {
    animal::EnergyPlan plan{};
    std::optional<quantity::Kilograms> mass{};
    QString massOrigin{};  ///< "median of 3 readings, newest 3 Oct 2026"
    std::optional<int> headcount{};
  };
  /// Without a mass the lines stand with `?`.
  void show(const State& state);
  [[nodiscard]] const animal::EnergyDerivation& derivation() const { return derivation_; }
  /// Index into the plan's factors; nothing for another step.
  [[nodiscard]] std::optional<std::size_t> factorAt(const QModelIndex& index) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

 signals:
  void planEdited(const tarebowl::animal::EnergyPlan& plan);

 private:
  [[nodiscard]] const animal::EnergyStep& step(int row) const;
  [[nodiscard]] QString stepText(const animal::EnergyStep& step) const;
  [[nodiscard]] QString numberText(const animal::EnergyStep& step, int column) const;
  [[nodiscard]] QString givesText(const animal::EnergyStep& step) const;
  [[nodiscard]] QString originText(const animal::EnergyStep& step) const;

  State state_;
  animal::EnergyDerivation derivation_;
};

}  // namespace tarebowl::ui
