// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/food_desk.h"
#include "ui/foods/sample_values_model.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace tarebowl::ui {

/// One report, publication, label or estimate as it is typed in. It is kept as a whole.
class SampleForm : public QWidget {
  Q_OBJECT
 public:
  explicit SampleForm(FoodDesk& desk, QWidget* parent = nullptr);

  void startNew(quantity::Date today);
  void startEdit(const store::StoredSample& stored);
  [[nodiscard]] SampleValuesModel& values() const { return *values_; }

 signals:
  void done();

 private:
  void build();
  [[nodiscard]] QWidget* makeTable();
  void show(const food::Sample& sample);
  void keep();
  void complain(const QString& what);
  [[nodiscard]] std::optional<food::Sample> read();

  FoodDesk& desk_;
  SampleValuesModel* values_;
  std::optional<store::StoredSample> edited_;
  QLabel* heading_;
  QLabel* complaint_;
  QComboBox* origin_;
  QLineEdit* source_;
  QLineEdit* date_;
  QLineEdit* lab_;
  QLineEdit* method_;
  QLineEdit* batch_;
  QLineEdit* note_;
  QTableView* table_;
  QPushButton* remove_;
};

}  // namespace tarebowl::ui
