// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QAbstractTableModel>

namespace tarebowl::ui {

/// The foods of the bowl that is on the scale: what to weigh, how it is prepared, what it weighed.
class BowlModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { ToWeigh, Food, Preparation, Weighed, kColumns };
  explicit BowlModel(const KitchenDesk& desk, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  [[nodiscard]] QString text(const intake::BowlItem& item, int column) const;
  [[nodiscard]] std::optional<intake::WeightState> stateOf(const intake::BowlItem& item) const;

  const KitchenDesk& desk_;
};

}  // namespace tarebowl::ui
