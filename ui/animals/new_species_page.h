// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"
#include "ui/animals/new_species.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace tarebowl::ui {

class ModelPicker;
class ReasonBar;
class TargetsLadder;

/// A species new to the collection, guided: names, model species, limits, group and energy, one under
/// another on a page, and all of them in sight. Nothing is written before the last button, and then all of
/// it, which one undo takes back.
class NewSpeciesPage : public QWidget {
  Q_OBJECT
 public:
  NewSpeciesPage(AnimalDesk& desk, ReasonBar& reason, Starters starters, QWidget* parent = nullptr);

  void startAnew();
  [[nodiscard]] ModelPicker& picker() const { return *picker_; }
  [[nodiscard]] TargetsLadder& ladder() const { return *ladder_; }
  /// What was told so far.
  [[nodiscard]] NewSpecies told() const;

 signals:
  void done();
  void cancelled();
  /// It is in the collection, and a diet is wanted for its group (by its code).
  void dietWanted(const QString& group);

 private:
  void build();
  [[nodiscard]] QWidget* makeSpecies();
  [[nodiscard]] QWidget* makeModel();
  [[nodiscard]] QWidget* makeLimits();
  [[nodiscard]] QWidget* makeGroup();
  [[nodiscard]] QWidget* makeFoot();
  [[nodiscard]] QLineEdit* addField(QFormLayout& form, const QString& name, const QString& hint);
  void takeModel();
  void takeProfile(const animal::TargetProfile& after);
  void showMissing();
  enum class Then { ShowTheGroup, DesignADiet };
  void make(Then then);
  [[nodiscard]] std::optional<animal::EnergyPlan> energy() const;

  AnimalDesk& desk_;
  animal::ProfileLookup lookup_;
  QLineEdit* name_;
  QLineEdit* scientific_;
  QComboBox* feeding_;
  QLineEdit* taxa_;
  ModelPicker* picker_;
  QLineEdit* why_;
  TargetsLadder* ladder_;
  QLineEdit* group_;
  QLineEdit* section_;
  QLineEdit* headcount_;
  QLineEdit* mass_;
  QComboBox* massUnit_;
  QComboBox* allometry_;
  QComboBox* factor_;
  QLabel* missing_;
  QPushButton* make_;
  QPushButton* makeAndDesign_;
  animal::TargetProfile profile_;  // what limits were set, on top of the model
};

}  // namespace tarebowl::ui
