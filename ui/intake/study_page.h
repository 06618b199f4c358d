// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/study_desk.h"

#include <QWidget>

class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QFrame;
class QLabel;
class QPushButton;

namespace tarebowl::ui {

class FaecesCard;

/// An intake study of a group: how many days it needs for the precision wanted, what is weighed and where
/// pans stand, and the faeces that were collected during it.
class StudyPage : public QWidget {
  Q_OBJECT
 public:
  StudyPage(IntakeDesk& intake, OpenCollection& collection, IntakeDesk::Clock today,
            QWidget* parent = nullptr);

  [[nodiscard]] StudyDesk& desk() const { return *desk_; }
  [[nodiscard]] FaecesCard& faeces() const { return *faeces_; }
  [[nodiscard]] QDoubleSpinBox& precision() const { return *precision_; }
  [[nodiscard]] QComboBox& subject() const { return *subject_; }
  [[nodiscard]] QLabel& days() const { return *days_; }
  [[nodiscard]] QLabel& words() const { return *words_; }

 signals:
  void planToWrite(const tarebowl::exchange::StudyPlanToWrite& plan);
  /// The report of these days.
  void reportWanted(const tarebowl::ui::DaySpan& days);

 private:
  [[nodiscard]] QWidget* makeForm();
  [[nodiscard]] QFrame* makePlan();
  void wire();
  void showSubjects();
  void showGroup();
  void showAnswer();
  void workOut();

  StudyDesk* desk_;
  QLabel* heading_;
  QComboBox* subject_;
  QDoubleSpinBox* precision_;
  QComboBox* confidence_;
  QDateEdit* first_;
  QLabel* days_;
  QLabel* words_;
  QPushButton* write_;
  QPushButton* report_;
  FaecesCard* faeces_;
  QLabel* banner_;
};

}  // namespace tarebowl::ui
