// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/target_profile.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace tarebowl::ui {

/// A row of fields for a further rule: a target on a nutrient, or a food group that is not given.
class RuleAdder : public QWidget {
  Q_OBJECT
 public:
  explicit RuleAdder(QWidget* parent = nullptr);

 signals:
  void targetTyped(const tarebowl::animal::ProfileTarget& rule);
  void exclusionTyped(const tarebowl::animal::Exclusion& rule);
  void refused(const QString& why);

 private:
  void fillUnits();
  void addTarget();
  void addExclusion();

  QComboBox* nutrient_;
  QLineEdit* min_;
  QLineEdit* max_;
  QComboBox* unit_;
  QComboBox* basis_;
  QLineEdit* group_;
  QLineEdit* reason_;
};

}  // namespace tarebowl::ui
