// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_calendar_model.h"
#include "ui/diets/rotation_planner.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/rows_model.h"

#include <QWidget>

#include <string>

class QHBoxLayout;
class QLabel;

namespace tarebowl::ui {

class RotationBar;
class RotationCalendar;
class RotationForm;
class RotationSide;

/// The rotation of a diet: its calendar, what can be done with it, how it stands, what is bought.
class RotationPane : public QWidget {
  Q_OBJECT
 public:
  RotationPane(RotationPlanner& planner, Dialogs dialogs, QWidget* parent = nullptr);
  /// title: of the diet.
  void setTitle(const QString& title) { diet_ = title; }
  [[nodiscard]] RotationCalendar& calendar() const { return *calendar_; }
  [[nodiscard]] RotationForm& form() const { return *form_; }
  [[nodiscard]] RotationSide& side() const { return *side_; }
  [[nodiscard]] QLabel& banner() const { return *banner_; }

 signals:
  void dismissed();
  void told(const QString& what);

 private:
  void build();
  void buildHead(QHBoxLayout& row);
  void wire();
  void addActions();
  void showList();
  void showView();
  void showPlanning();
  void askForPlan();
  void planFromFile();
  void print();
  void write();
  void complain(const QString& what);

  RotationPlanner& planner_;
  Dialogs dialogs_;
  QString diet_;
  RotationCalendarModel* model_;
  RotationCalendar* calendar_;
  RotationForm* form_;
  RotationSide* side_;
  RowsModel* purchase_;
  QLabel* title_;
  QLabel* made_;
  QLabel* banner_;
  QLabel* nothing_;
  RotationBar* bar_;
  QWidget* sheet_;  ///< the calendar and what is below it
  std::optional<CalendarCell> hand_;
};

}  // namespace tarebowl::ui
