// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_view.h"
#include "ui/shared/rung.h"

#include <QAbstractTableModel>

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// The rungs of a period's mean day, or of one day against its own wider zones, those in trouble first. For a
/// BalanceLadder.
class RotationLadderModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  using QAbstractTableModel::QAbstractTableModel;

  /// day: nothing for the whole period.
  void show(const RotationView* view, std::optional<int> day);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  std::vector<Rung> rungs_;
  QStringList zones_;
};

}  // namespace tarebowl::ui
