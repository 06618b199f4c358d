// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/health/health_desk.h"
#include "ui/health/health_tab.h"
#include "ui/shared/rows_model.h"

class QSpinBox;

namespace tarebowl::ui {

/// What was eaten before a sign against days without it, in words and food by food.
class LookBackPane : public HealthTab {
  Q_OBJECT
 public:
  explicit LookBackPane(HealthDesk& desk, QWidget* parent = nullptr);

  [[nodiscard]] PlainTable& links() const { return table(); }
  /// Before a sign, in which bowls are looked at.
  [[nodiscard]] int hours() const;

 private:
  void build();
  void showPage();

  HealthDesk& desk_;
  QSpinBox* hours_;
  RowsModel* rows_;
};

}  // namespace tarebowl::ui
