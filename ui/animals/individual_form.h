// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace tarebowl::ui {

/// Who the animal is: sex, birth, stages of life, coming and going. Each field is kept as soon as it is left.
class IndividualForm : public QFrame {
  Q_OBJECT
 public:
  explicit IndividualForm(AnimalDesk& desk, QWidget* parent = nullptr);

 private:
  void build();
  [[nodiscard]] QLineEdit* addField(QFormLayout& form, const QString& name, const QString& hint);
  void showPage();
  void keep();
  void addStage();
  void complain(const QString& what);
  [[nodiscard]] std::optional<animal::Individual> read();
  [[nodiscard]] bool readDay(const QLineEdit& field, std::optional<quantity::Date>& day);

  AnimalDesk& desk_;
  QLineEdit* code_;
  QComboBox* sex_;
  QLineEdit* born_;
  QCheckBox* estimated_;
  QLineEdit* arrived_;
  QLineEdit* left_;
  QCheckBox* died_;
  QComboBox* stage_;
  QLabel* stages_;
  QLabel* stays_;
  QLineEdit* note_;
  QLabel* complaint_;
};

}  // namespace tarebowl::ui
