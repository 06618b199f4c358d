// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_desk.h"

#include <QComboBox>

namespace tarebowl::ui {

/// Energy, and what some food of a problem tells, by their names.
[[nodiscard]] std::vector<food::NutrientId> nutrientsTold(const diet::BalanceProblem& problem);

/// What is followed over time: the targets and ratios that the group is fed by, then every nutrient that some
/// food of its bowls tells, a day and animal.
class SubjectBox : public QComboBox {
  Q_OBJECT
 public:
  explicit SubjectBox(IntakeDesk& desk, QWidget* parent = nullptr);

 private:
  void fill();

  IntakeDesk& desk_;
  std::vector<transfer::TrendSubject> subjects_;
};

}  // namespace tarebowl::ui
