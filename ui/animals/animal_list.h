// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_list_model.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QTreeView;

namespace tarebowl::ui {

/// The list at the left of the room, with the field that narrows it as one types.
class AnimalList : public QWidget {
  Q_OBJECT
 public:
  explicit AnimalList(AnimalDesk& desk, QWidget* parent = nullptr);

  void focusField();
  void choose(const AnimalPlace& place);
  [[nodiscard]] QTreeView& tree() const { return *tree_; }
  [[nodiscard]] QLineEdit& field() const { return *field_; }
  [[nodiscard]] const AnimalListModel& model() const { return *model_; }

 signals:
  void chosen(const tarebowl::ui::AnimalPlace& place);
  void speciesWanted();
  void groupWanted();
  void individualWanted();

 private:
  void build();
  void wire();
  void follow();
  void showCount();
  [[nodiscard]] QModelIndex firstHit() const;

  AnimalDesk& desk_;
  AnimalListModel* model_;
  QLineEdit* field_;
  QPushButton* add_;
  QTreeView* tree_;
  QLabel* count_;
  bool following_ = false;  // the selection moves with the desk, not by a hand
};

}  // namespace tarebowl::ui
