// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_list_model.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace tarebowl::ui {

/// The list at the left of the room, with the field that narrows it as one types.
class FoodList : public QWidget {
  Q_OBJECT
 public:
  explicit FoodList(FoodDesk& desk, QWidget* parent = nullptr);

  void focusField();
  /// How many doubts the checks raise; nothing while they are worked out.
  void showDoubts(std::optional<std::size_t> doubts);
  void choose(FoodId id);
  [[nodiscard]] std::vector<FoodId> chosenFoods() const;
  [[nodiscard]] QTableView& table() const { return *table_; }
  [[nodiscard]] QLineEdit& field() const { return *field_; }
  [[nodiscard]] const FoodListModel& model() const { return *model_; }

 signals:
  /// food: a FoodId as Qt can carry it.
  void chosen(qint64 food);
  void addWanted();
  void importWanted();
  void compareWanted();
  void checksWanted();

 private:
  void build();
  void wire();
  void showCount();
  void follow();
  void takeSelection();
  void fitColumns();
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void inkMark();

  FoodDesk& desk_;
  FoodListModel* model_;
  QLineEdit* field_;
  QTableView* table_;
  QLabel* count_;
  QPushButton* import_;
  QPushButton* checks_;
  QPushButton* add_;
  QPushButton* compare_;
  std::optional<std::size_t> doubts_;
  bool following_ = false;  // the selection moves with the desk, not by a hand
};

}  // namespace tarebowl::ui
