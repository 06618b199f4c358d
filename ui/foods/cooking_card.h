// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"

#include <QFrame>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

class NutrientNumbersModel;

/// Which raw food this one is cooked from, and what cooking does to it: grams left of a gram, the share of
/// each nutrient that stays, and who says so. What nobody analysed in the cooked food is worked out from it.
class CookingCard : public QFrame {
  Q_OBJECT
 public:
  explicit CookingCard(FoodDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] NutrientNumbersModel& retentions() const { return *retentions_; }
  [[nodiscard]] QComboBox& raw() const { return *raw_; }

 signals:
  void complained(const QString& what);

 private:
  void build();
  void showCooking();
  void fillRaw(const std::string& code);
  void keep();
  [[nodiscard]] std::optional<food::Cooking> read();

  FoodDesk& desk_;
  QComboBox* raw_;
  QLineEdit* yield_;
  QLineEdit* source_;
  NutrientNumbersModel* retentions_;
  bool showing_ = false;
};

}  // namespace tarebowl::ui
