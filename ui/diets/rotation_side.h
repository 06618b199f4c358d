// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/rotation_view.h"

#include <QWidget>

#include <string>

class QLabel;

namespace tarebowl::ui {

class RotationLadderModel;
class SegmentedSwitch;

/// Beside the calendar: the ladder of the whole period, or of the day that the hand is on, and the same in
/// sentences.
class RotationSide : public QWidget {
  Q_OBJECT
 public:
  explicit RotationSide(QWidget* parent = nullptr);
  void show(const RotationView* view, std::optional<int> day);
  [[nodiscard]] RotationLadderModel& ladder() const { return *model_; }
  [[nodiscard]] QString sentences() const;

 private:
  void showAgain();

  const RotationView* view_ = nullptr;
  std::optional<int> day_;
  RotationLadderModel* model_;
  SegmentedSwitch* which_;
  QLabel* words_;
};

}  // namespace tarebowl::ui
