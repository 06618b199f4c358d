// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QLabel;

namespace tarebowl::ui {

class MassChart;
class SegmentedSwitch;

/// Body mass over time, per animal or as a mean, and the mass that counts today.
class MassCard : public QFrame {
  Q_OBJECT
 public:
  explicit MassCard(AnimalDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] MassChart& chart() const { return *chart_; }

 private:
  void showPage();

  AnimalDesk& desk_;
  QLabel* now_;
  SegmentedSwitch* view_;
  MassChart* chart_;
  QLabel* none_;
};

}  // namespace tarebowl::ui
