// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QWidget>

class QAction;
class QHBoxLayout;
class QLabel;

namespace tarebowl::ui {

/// The name of what is shown, what it is, and the buttons at its right.
class PageHeader : public QWidget {
  Q_OBJECT
 public:
  explicit PageHeader(AnimalDesk& desk, QWidget* parent = nullptr);
  void addAction(QAction* action);
  void addWidget(QWidget* widget);

 private:
  void showPage();

  AnimalDesk& desk_;
  QLabel* title_;
  QLabel* subtitle_;
  QHBoxLayout* row_;
};

}  // namespace tarebowl::ui
