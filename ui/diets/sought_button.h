// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <QToolButton>

namespace tarebowl::ui {

/// What is sought among the diets that do: closest to now, lowest cost, least or most of a nutrient. A button
/// with a menu that names what is in force.
class SoughtButton : public QToolButton {
  Q_OBJECT
 public:
  explicit SoughtButton(QWidget* parent = nullptr);
  /// Offers what this problem can be asked for: no lowest cost without prices, only nutrients that some food
  /// knows.
  void show(const diet::BalanceProblem& problem);

 signals:
  void chosen(const tarebowl::diet::Objective& objective);

 private:
  void addNutrients(const QString& title, diet::Objective::Kind kind, const diet::BalanceProblem& problem);
  void addChoice(QMenu& menu, const QString& text, const diet::Objective& objective,
                 const diet::Objective& current);
};

/// How sure the targets have to hold, in view of the scatter of the foods' values.
class SureButton : public QToolButton {
  Q_OBJECT
 public:
  explicit SureButton(QWidget* parent = nullptr);
  void show(std::optional<double> confidence);

 signals:
  void chosen(std::optional<double> confidence);
};

[[nodiscard]] QString objectiveText(const diet::Objective& objective);

}  // namespace tarebowl::ui
