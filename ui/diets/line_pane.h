// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_problem.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace tarebowl::ui {

class DietDesk;

/// What the table has no room for of the food that the hand is on: how the kitchen prepares it, what it is
/// given for, and what this animal's keepers must know of it.
class LinePane : public QWidget {
  Q_OBJECT
 public:
  explicit LinePane(DietDesk& desk, QWidget* parent = nullptr);
  void show(std::optional<std::size_t> food);
  [[nodiscard]] std::optional<std::size_t> food() const { return food_; }

 signals:
  /// What gives while its limit moves?
  void exploreWanted(qint64 food);

 private:
  void build();
  void refresh();
  void takeRange();
  void showRange(const diet::PlaceInVersion& place, bool isDraft);
  [[nodiscard]] QString cautions() const;

  DietDesk& desk_;
  std::optional<std::size_t> food_;
  QLabel* name_;
  QLineEdit* preparation_;
  QComboBox* purpose_;
  QToolButton* remove_;
  QToolButton* explore_;
  QWidget* range_;  ///< of what is given unweighed
  QLineEdit* low_;
  QLineEdit* high_;
  QLabel* cautions_;
};

}  // namespace tarebowl::ui
