// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"
#include "ui/shared/rung.h"

#include <QAbstractTableModel>

#include <vector>

namespace tarebowl::ui {

class DietDesk;

/// The rungs of the diet on the desk, those in trouble first. For a BalanceLadder.
class LadderModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  explicit LadderModel(DietDesk& desk, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  /// What a row speaks of.
  [[nodiscard]] RungRef refAt(int row) const;
  [[nodiscard]] int rowOf(RungRef rung) const;

 private:
  void reset();
  void refresh();
  [[nodiscard]] const diet::TargetBalance& targetAt(int row) const;

  DietDesk& desk_;
  std::vector<std::size_t> order_;  ///< indices into the balance's targets
};

/// The order of the ladder: short and over first (hard rules, then the greatest shortfall), then at a limit,
/// then met, then unknown; within each as the problem lists them.
[[nodiscard]] std::vector<std::size_t> ladderOrder(const diet::BalanceProblem& problem,
                                                   const diet::Balance& balance);

/// What a rung's track cannot say: scatter, chance, how much is known, whether the rule is hard.
[[nodiscard]] QStringList rungRemarks(const diet::BalanceProblem& problem, const diet::TargetBalance& target);

[[nodiscard]] Rung rungOf(const diet::BalanceProblem& problem, const diet::TargetBalance& target);

}  // namespace tarebowl::ui
