// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_planner.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace tarebowl::ui {

class SegmentedSwitch;

/// Which days are looked at, and what can be planned: the row above the calendar. It announces what is
/// wanted.
class RotationBar : public QWidget {
  Q_OBJECT
 public:
  explicit RotationBar(QWidget* parent = nullptr);
  void showList(const RotationPlanner& planner);
  /// Nothing: no rotation is looked at.
  void showView(const RotationView* view);
  void showPlanning(bool isPlanning);

 signals:
  /// The place in the planner's list.
  void periodChosen(int place);
  void planWanted();
  void planAgainWanted(bool asEaten);
  void stopWanted();

 private:
  QComboBox* periods_;
  QPushButton* new_;
  QPushButton* again_;
  SegmentedSwitch* counted_;
  QLabel* working_;
  QPushButton* stop_;
};

}  // namespace tarebowl::ui
