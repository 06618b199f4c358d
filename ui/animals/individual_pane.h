// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QWidget>

namespace tarebowl::ui {

class MassEntry;
class ReasonBar;

/// One animal: who it is, what it weighed, and what changed when.
class IndividualPane : public QWidget {
  Q_OBJECT
 public:
  IndividualPane(AnimalDesk& desk, ReasonBar& reason, QWidget* parent = nullptr);
  [[nodiscard]] MassEntry& entry() const { return *entry_; }

 private:
  MassEntry* entry_;
};

}  // namespace tarebowl::ui
