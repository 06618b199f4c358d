// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/import_desk.h"
#include "ui/shared/state_mark.h"

#include <QAbstractTableModel>

#include <optional>

namespace tarebowl::ui {

/// What an import will do, line by line: all of it or one kind. A row is made into words only when it is
/// looked at, so that a table of a million lines is shown as fast as a short one.
class PlanModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Line, Subject, Outcome, ColumnCount };
  enum Role { MarkRole = Qt::UserRole };

  explicit PlanModel(const ImportDesk& desk, QObject* parent = nullptr);

  /// Nothing: every line.
  void setKind(std::optional<exchange::PlanLineKind> kind);
  [[nodiscard]] std::size_t countOf(std::optional<exchange::PlanLineKind> kind) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  void take();
  [[nodiscard]] std::size_t placeOf(int row) const;

  const ImportDesk& desk_;
  std::shared_ptr<const exchange::PlanLines> lines_;  // kept: the desk may have others before this one resets
  std::optional<exchange::PlanLineKind> kind_;
};

/// Shape for a kind of line; its words stand beside it.
[[nodiscard]] Mark markOf(exchange::PlanLineKind kind);

}  // namespace tarebowl::ui
