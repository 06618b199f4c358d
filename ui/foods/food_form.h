// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QStackedWidget;

namespace tarebowl::ui {

class SegmentedSwitch;

/// What a food is, apart from its composition. Each field is kept as soon as it is left.
class FoodForm : public QWidget {
  Q_OBJECT
 public:
  explicit FoodForm(FoodDesk& desk, QWidget* parent = nullptr);
  void focusName();

 signals:
  void done();

 private:
  void build();
  [[nodiscard]] QLineEdit* addField(QFormLayout& form, const QString& name, const QString& hint = {});
  void showFood();
  void keep();
  void complain(const QString& what);
  [[nodiscard]] QWidget* makeCards();
  [[nodiscard]] QWidget* makeMaking();
  void showMaking();
  [[nodiscard]] std::optional<food::Food> read();

  FoodDesk& desk_;
  QLineEdit* name_;
  QComboBox* form_;
  QComboBox* group_;
  QLineEdit* code_;
  QLineEdit* unitMass_;
  QLineEdit* scaleStep_;
  QLineEdit* edible_;
  QLineEdit* price_;
  QCheckBox* inStock_;
  QLineEdit* note_;
  SegmentedSwitch* making_;     ///< cooked from one food, or mixed from several
  QStackedWidget* makingCard_;  ///< the card of it
  QLabel* complaint_;
  std::optional<FoodId> shown_{};
};

}  // namespace tarebowl::ui
