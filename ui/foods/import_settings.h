// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/foods/import_desk.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLineEdit;
class QSpinBox;

namespace tarebowl::ui {

class SegmentedSwitch;

/// How the table as a whole is read: its form, its numbers, what they are per, and whose it is.
class ImportSettings : public QWidget {
  Q_OBJECT
 public:
  explicit ImportSettings(ImportDesk& desk, QWidget* parent = nullptr);

 signals:
  /// What was typed is not understood; nothing was changed.
  void notUnderstood(const QString& complaint);

 private:
  void build();
  void wire();
  void show();
  /// Changes the mapping by one field.
  template <class Change>
  void change(Change edit);
  void changePer();
  void readAgain();

  ImportDesk& desk_;
  SegmentedSwitch* layout_;
  SegmentedSwitch* mark_;
  QComboBox* basis_;
  QLineEdit* per_;
  QCheckBox* zero_;
  QLineEdit* source_;
  QComboBox* delimiter_;
  QComboBox* encoding_;
  QSpinBox* header_;
  QCheckBox* units_;
  bool showing_ = false;
};

}  // namespace tarebowl::ui
