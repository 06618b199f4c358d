// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_desk.h"

#include <QWidget>

class QComboBox;
class QListWidget;

namespace tarebowl::ui {

/// The section and its groups. A group without a bowl cannot be chosen.
class GroupChoice : public QWidget {
  Q_OBJECT
 public:
  explicit GroupChoice(IntakeDesk& desk, QWidget* parent = nullptr);

  [[nodiscard]] QComboBox& sections() const { return *sections_; }
  [[nodiscard]] QListWidget& groups() const { return *groups_; }

 private:
  void showGroups();
  void fillGroups();

  IntakeDesk& desk_;
  QComboBox* sections_;
  QListWidget* groups_;
};

}  // namespace tarebowl::ui
