// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QAbstractTableModel>

#include <vector>

namespace tarebowl::ui {

/// Who is in the group, and who was: those that have left come last.
class MembersModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Code, Sex, Age, Stage, Mass, Stay, ColumnCount };

  explicit MembersModel(AnimalDesk& desk, QObject* parent = nullptr);

  [[nodiscard]] const store::StoredMembership* stayAt(const QModelIndex& index) const;
  [[nodiscard]] bool isOver(const store::StoredMembership& stay) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void rebuild();
  [[nodiscard]] QString text(const store::StoredMembership& stay, int column) const;

  AnimalDesk& desk_;
  std::vector<store::StoredMembership> stays_;
};

}  // namespace tarebowl::ui
