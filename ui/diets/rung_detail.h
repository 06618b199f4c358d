// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/diets/diet_draft.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace tarebowl::ui {

class ContributionChart;
class DietDesk;

/// What a rung opens into: its bounds, which can be edited, where they come from, and what each food brings.
class RungDetail : public QWidget {
  Q_OBJECT
 public:
  explicit RungDetail(DietDesk& desk, QWidget* parent = nullptr);
  void show(std::optional<RungRef> rung);

 signals:
  /// What gives while its bound moves?
  void exploreWanted(const tarebowl::ui::RungRef& rung);

 private:
  void build();
  void refresh();
  void takeBounds();
  bool take(QLineEdit& field, std::optional<double>& bound);

  DietDesk& desk_;
  std::optional<RungRef> rung_;
  QLabel* title_;
  QLabel* unit_;
  QLineEdit* min_;
  QLineEdit* max_;
  QLabel* about_;  ///< scatter, chance, coverage, source
  ContributionChart* chart_;
};

}  // namespace tarebowl::ui
