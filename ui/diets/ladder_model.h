// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"
#include "ui/diets/rung_view.h"
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

  /// How the rungs are read: their order, their basis and unit.
  void setView(const LadderView& view);
  [[nodiscard]] const LadderView& view() const { return view_; }
  /// What a row speaks of.
  [[nodiscard]] RungRef refAt(int row) const;
  [[nodiscard]] int rowOf(RungRef rung) const;

 private:
  void reset();
  void refresh();
  [[nodiscard]] const diet::TargetBalance& targetAt(int row) const;
  [[nodiscard]] const diet::Balance& balance() const;
  [[nodiscard]] std::vector<std::size_t> wantedOrder() const;
  void workOut();
  [[nodiscard]] Rung rungAt(int row) const;

  DietDesk& desk_;
  LadderView view_;
  BowlAmounts bowl_;                      ///< on the bases that the view may ask for
  std::optional<diet::Balance> offered_;  ///< as offered, where the view asks for it
  std::vector<std::size_t> order_;        ///< indices into the balance's targets
};

/// The order of the ladder: short and over first (hard rules, then the greatest shortfall), then at a limit,
/// then met, then unknown; within each as the problem lists them.
[[nodiscard]] std::vector<std::size_t> ladderOrder(const diet::BalanceProblem& problem,
                                                   const diet::Balance& balance);

/// What a rung's track cannot say: scatter, chance, how much is known, whether the rule is hard.
[[nodiscard]] QStringList rungRemarks(const diet::BalanceProblem& problem, const diet::TargetBalance& target);

/// scale: on another basis than the target's own.
[[nodiscard]] Rung rungOf(const diet::BalanceProblem& problem, const diet::TargetBalance& target,
                          const std::optional<RungScale>& scale = std::nullopt);

}  // namespace tarebowl::ui
