// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTableView>

namespace tarebowl::ui {

class DietDesk;
class IngredientModel;

/// The ingredient table: a keystroke on grams edits them, Space on the lock turns it, Escape takes back what
/// was typed.
class IngredientTable : public QTableView {
  Q_OBJECT
 public:
  IngredientTable(IngredientModel& model, DietDesk& desk, QWidget* parent = nullptr);
  /// Tall enough for every food.
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  /// Moves to a food whose name holds this text; false where there is none.
  bool goTo(const QString& partOfName);
  /// Puts the hand on the grams of the food in this row.
  void goToFood(int row);

 signals:
  /// The hand is on this food; -1: on none.
  void handOn(int row);

 private:
  void fitColumns();

  IngredientModel& ingredients_;
};

}  // namespace tarebowl::ui
