// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace tarebowl::ui {

class MembersModel;
class PlainTable;

/// What the group is called, where it is kept, and who is in it since when.
class MembersCard : public QFrame {
  Q_OBJECT
 public:
  explicit MembersCard(AnimalDesk& desk, QWidget* parent = nullptr);

 signals:
  void shownWanted(const tarebowl::ui::AnimalPlace& place);

 private:
  void build();
  void wire();
  void showPage();
  void showButtons();
  void keepFacts();
  void join();
  void addNew();

  AnimalDesk& desk_;
  MembersModel* model_;
  PlainTable* table_;
  QLineEdit* name_;
  QLineEdit* section_;
  QLineEdit* count_;
  QComboBox* candidates_;
  QPushButton* join_;
  QPushButton* end_;
  QPushButton* open_;
};

}  // namespace tarebowl::ui
