// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QListWidget;

namespace tarebowl::ui {

/// What changed when, by whom, in words: read from the change log, which nobody can rewrite.
class HistoryCard : public QFrame {
  Q_OBJECT
 public:
  explicit HistoryCard(AnimalDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QListWidget& list() const { return *list_; }

 private:
  void showHistory();

  AnimalDesk& desk_;
  QListWidget* list_;
};

}  // namespace tarebowl::ui
