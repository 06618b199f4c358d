// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/plan_model.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace tarebowl::ui {

class SegmentedSwitch;

/// What an import will do, line by line, narrowed to one kind where that is wanted.
class ImportPreview : public QWidget {
  Q_OBJECT
 public:
  explicit ImportPreview(const ImportDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] PlanModel& model() const { return *model_; }
  [[nodiscard]] QTableView& table() const { return *table_; }
  void choose(std::optional<exchange::PlanLineKind> kind);

 private:
  void showCounts();

  const ImportDesk& desk_;
  PlanModel* model_;
  SegmentedSwitch* kinds_;
  QTableView* table_;
  QLabel* told_;
};

}  // namespace tarebowl::ui
