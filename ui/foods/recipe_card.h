// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace tarebowl::ui {

class FoodPicker;
class RecipePartsModel;

/// What a house mix is made of: foods of the collection with the grams weighed in, what a gram of them gives,
/// and who says so. What nobody analysed in the mix is worked out from its parts.
class RecipeCard : public QFrame {
  Q_OBJECT
 public:
  explicit RecipeCard(FoodDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] RecipePartsModel& parts() const { return *parts_; }
  [[nodiscard]] FoodPicker& picker() const { return *picker_; }
  [[nodiscard]] QString standing() const;

 signals:
  void complained(const QString& what);

 private:
  void build();
  [[nodiscard]] QWidget* makeParts();
  void showRecipe();
  void addPart(const QString& code);
  void removePart();
  void keep();
  [[nodiscard]] std::optional<food::Recipe> read();
  [[nodiscard]] QString nameOfPart(const std::string& code) const;

  FoodDesk& desk_;
  FoodPicker* picker_;
  RecipePartsModel* parts_;
  QTableView* table_;
  QPushButton* remove_;
  QLineEdit* yield_;
  QLineEdit* source_;
  QLabel* standing_;
  std::optional<FoodId> shown_{};  // whose unfinished parts stand in the table
  bool showing_ = false;
};

}  // namespace tarebowl::ui
