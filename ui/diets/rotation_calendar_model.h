// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_view.h"

#include <QAbstractTableModel>

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::ui {

/// A food on a day of the calendar.
struct CalendarCell {
  std::size_t food = 0;  ///< of the problem
  int day = 0;
  bool operator==(const CalendarCell&) const = default;
};

/// Days by foods, grams per animal; above them what each day lacks. What a hand wants is announced, not done.
class RotationCalendarModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  /// Beside the texts, for the painting of a cell.
  enum Role {
    LockedRole = Qt::UserRole + 1,
    OverRole,     ///< it was fed
    MarkRole,     ///< of the row of states: a Mark
    IsTodayRole,  ///< in headers too
    StepRole      ///< of the scale, grams
  };
  using QAbstractTableModel::QAbstractTableModel;

  void show(const RotationView* view, quantity::Date today);
  [[nodiscard]] std::optional<CalendarCell> cellAt(const QModelIndex& index) const;
  [[nodiscard]] QModelIndex indexOf(const CalendarCell& cell) const;
  /// The day of a column; nothing for that of means.
  [[nodiscard]] std::optional<int> dayAt(int column) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  [[nodiscard]] Qt::DropActions supportedDropActions() const override { return Qt::CopyAction; }
  [[nodiscard]] QStringList mimeTypes() const override;
  [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;
  [[nodiscard]] bool canDropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                                     const QModelIndex& parent) const override;
  bool dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                    const QModelIndex& parent) override;

 signals:
  void moveWanted(qint64 food, int from, int to);
  void gramsWanted(qint64 food, int day, double grams);

 private:
  /// The first row says how the days stand.
  [[nodiscard]] static bool isStates(int row) { return row == 0; }
  [[nodiscard]] std::size_t foodAt(int row) const { return foods_.at(static_cast<std::size_t>(row) - 1); }
  [[nodiscard]] quantity::Grams meanOf(std::size_t food) const;
  [[nodiscard]] QString gramsText(const QModelIndex& index) const;
  [[nodiscard]] QVariant stateData(int column, int role) const;
  [[nodiscard]] QString sentence(const QModelIndex& index) const;

  std::optional<RotationView> view_;
  quantity::Date today_{};
  std::vector<std::size_t> foods_;  ///< a row each, after that of the states
};

}  // namespace tarebowl::ui
