// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"

#include <QFrame>

class QLabel;

namespace tarebowl::ui {

class NutrientNumbersModel;

/// The food's sampling plan: which nutrients the laboratory looks at and how often, and what of it is due.
class PlanCard : public QFrame {
  Q_OBJECT
 public:
  explicit PlanCard(FoodDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] NutrientNumbersModel& model() const { return *model_; }
  [[nodiscard]] QString dueText() const;

 signals:
  void complained(const QString& what);

 private:
  void showPlan();
  void keep();

  FoodDesk& desk_;
  NutrientNumbersModel* model_;
  QLabel* due_;
};

}  // namespace tarebowl::ui
