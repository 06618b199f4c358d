// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QPushButton;

namespace tarebowl::ui {

class PlainTable;
class ReadingsModel;
class ReasonBar;

/// Every weighing and score as a list, where a doubtful one is put right or left out, with a reason.
class ReadingsCard : public QFrame {
  Q_OBJECT
 public:
  ReadingsCard(AnimalDesk& desk, ReasonBar& reason, QWidget* parent = nullptr);
  [[nodiscard]] ReadingsModel& model() const { return *model_; }
  [[nodiscard]] PlainTable& table() const { return *table_; }

 private:
  void showButtons();
  void leaveOut();
  void correct();

  AnimalDesk& desk_;
  ReasonBar& reason_;
  ReadingsModel* model_;
  PlainTable* table_;
  QPushButton* leaveOut_;
  QPushButton* correct_;
};

}  // namespace tarebowl::ui
