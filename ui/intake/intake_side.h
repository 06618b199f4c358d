// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_view.h"

#include <QScrollArea>

class QLabel;
class QVBoxLayout;

namespace tarebowl::ui {

/// What was noticed in the days that are in sight, how much is known of them, and what it means for one
/// animal.
class IntakeSide : public QScrollArea {
  Q_OBJECT
 public:
  explicit IntakeSide(QWidget* parent = nullptr);
  void show(const transfer::IntakeTrend* trend, const DaySpan& span);

 private:
  QVBoxLayout* noticed_;
  QLabel* known_;
  QLabel* rule_;
  QLabel* perAnimal_;
};

}  // namespace tarebowl::ui
