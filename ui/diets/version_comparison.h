// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/desk_diet.h"
#include "ui/shared/state_mark.h"

#include <QAbstractTableModel>
#include <QString>
#include <QStringList>

#include <vector>

namespace tarebowl::ui {

struct DietDraft;

/// A version of a diet as it stands: its number, what it says, and its problem with grams.
struct ComparedVersion {
  diet::DietVersion version{};
  diet::BalanceProblem problem{};
  diet::Diet grams{};
};
[[nodiscard]] ComparedVersion comparedVersion(const transfer::DeskDiet& desk);
[[nodiscard]] ComparedVersion comparedVersion(const DietDraft& draft);

/// Two versions side by side: grams of every food, every rule with its state, energy and cost.
class VersionComparison : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { What, Before, After, Change, ColumnCount };

  using QAbstractTableModel::QAbstractTableModel;

  void show(const ComparedVersion& before, const ComparedVersion& after);
  void clear();
  /// What differs, a sentence each; empty where nothing does.
  [[nodiscard]] const QStringList& sentences() const { return sentences_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  struct Row {
    QString cells[ColumnCount];
  };
  void addFoods(const ComparedVersion& before, const ComparedVersion& after);
  void addRules(const ComparedVersion& before, const ComparedVersion& after);
  void addSums(const ComparedVersion& before, const ComparedVersion& after);

  std::vector<Row> rows_;
  QStringList sentences_;
  int numbers_[2] = {0, 0};
};

}  // namespace tarebowl::ui
