// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/health/health_desk.h"
#include "ui/health/health_tab.h"
#include "ui/shared/rows_model.h"

class QComboBox;
class QDoubleSpinBox;

namespace tarebowl::ui {

/// Calcium as it was eaten against the targets, in words and zones, and the least dose of a supplement.
class CalciumReview : public HealthTab {
  Q_OBJECT
 public:
  explicit CalciumReview(HealthDesk& desk, QWidget* parent = nullptr);

  [[nodiscard]] PlainTable& zones() const { return table(); }

 private:
  void build();
  void showSupplements();
  void showView();
  void ask();

  HealthDesk& desk_;
  QComboBox* supplement_;
  QDoubleSpinBox* retained_;  ///< % of a dust
  RowsModel* rows_;
};

}  // namespace tarebowl::ui
