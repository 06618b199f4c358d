// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

/// Quick entry of a mass or a condition score, or both. A mass that is doubtful is asked about here, in the
/// row itself, and is written only after a second yes.
class MassEntry : public QFrame {
  Q_OBJECT
 public:
  explicit MassEntry(AnimalDesk& desk, QWidget* parent = nullptr);
  void focusMass();

 private:
  void build();
  [[nodiscard]] QHBoxLayout* makeQuestion();
  void showPage();
  void keep();
  void keepMass(quantity::Kilograms mass, store::Confirmed confirmed);
  void keepScore();
  void ask(animal::MassDoubt doubt, const animal::MassReading& reading,
           std::optional<quantity::Kilograms> expected);
  void dismiss();
  void say(const QString& what);
  [[nodiscard]] std::optional<animal::MassReading> read();
  [[nodiscard]] bool readScore(std::optional<animal::ConditionReading>& score);
  [[nodiscard]] const MeasuredSeries* chosenSeries() const;

  AnimalDesk& desk_;
  QComboBox* who_;
  QLineEdit* day_;
  QLineEdit* mass_;
  QComboBox* unit_;
  QComboBox* method_;
  QLineEdit* score_;
  QComboBox* scale_;
  QPushButton* keep_;
  QWidget* question_ = nullptr;
  QLabel* asked_;
  QPushButton* yes_;
  QPushButton* meant_;
  std::optional<quantity::Kilograms> doubted_;
  std::optional<quantity::Kilograms> instead_;
  std::optional<AnimalPlace> filledFor_;
};

}  // namespace tarebowl::ui
