// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/comparison_model.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace tarebowl::ui {

/// Several foods side by side.
class ComparisonPane : public QWidget {
  Q_OBJECT
 public:
  explicit ComparisonPane(FoodDesk& desk, QWidget* parent = nullptr);

  void compare(const std::vector<FoodId>& foods);
  [[nodiscard]] ComparisonModel& model() const { return *model_; }

 signals:
  void done();

 private:
  void fitColumns();
  void resizeEvent(QResizeEvent* event) override;

  FoodDesk& desk_;
  ComparisonModel* model_;
  QTableView* table_;
  QLabel* title_;
};

}  // namespace tarebowl::ui
