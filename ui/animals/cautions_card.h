// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

namespace tarebowl::ui {

class PlainTable;

/// Foods that are known to be dangerous to the species, or to need thought.
class CautionsCard : public QFrame {
  Q_OBJECT
 public:
  explicit CautionsCard(AnimalDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] PlainTable& table() const { return *table_; }

 private:
  PlainTable* table_;
};

}  // namespace tarebowl::ui
