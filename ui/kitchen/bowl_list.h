// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/kitchen/kitchen_desk.h"

#include <QWidget>

class QComboBox;
class QDateEdit;
class QListWidget;
class QVBoxLayout;

namespace tarebowl::ui {

/// The section, the day and the bowls of its sheet, each with how far it is weighed in.
class BowlList : public QWidget {
  Q_OBJECT
 public:
  explicit BowlList(KitchenDesk& desk, QWidget* parent = nullptr);

  /// Above the section.
  void addAtTop(QWidget* widget);

  [[nodiscard]] QComboBox& sections() const { return *sections_; }
  [[nodiscard]] QDateEdit& days() const { return *days_; }
  [[nodiscard]] QListWidget& bowls() const { return *bowls_; }

 private:
  void build();
  void showSheet();
  void showPlace();

  KitchenDesk& desk_;
  QVBoxLayout* layout_;
  QComboBox* sections_;
  QDateEdit* days_;
  QListWidget* bowls_;
};

}  // namespace tarebowl::ui
