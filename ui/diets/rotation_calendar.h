// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_calendar_model.h"

#include <QTableView>

#include <string>

namespace tarebowl::ui {

/// The calendar grid: days by foods. A food is dragged to another day, or goes there by Alt with an arrow; L
/// locks a cell or sets it free; Delete leaves the food out that day; a number typed is kept.
class RotationCalendar : public QTableView {
  Q_OBJECT
 public:
  explicit RotationCalendar(RotationCalendarModel& model, QWidget* parent = nullptr);
  /// What the hand is on; nothing on means and states.
  [[nodiscard]] std::optional<CalendarCell> cell() const;
  [[nodiscard]] std::optional<int> day() const;
  void goTo(const CalendarCell& cell);
  void fitColumns();
  [[nodiscard]] QSize sizeHint() const override;

  // What keys do, for buttons too.
  void moveFood(int days);
  void turnLock();
  void leaveOut();

 signals:
  void moveWanted(qint64 food, int from, int to);
  void lockWanted(qint64 food, int day);
  void gramsWanted(qint64 food, int day, double grams);
  void handMoved();

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

 private:
  RotationCalendarModel& model_;
};

}  // namespace tarebowl::ui
