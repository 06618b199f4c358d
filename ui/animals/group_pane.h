// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QWidget>

class QPushButton;
class QStackedWidget;

namespace tarebowl::ui {

class EnergyCard;
class HistoryCard;
class MassCard;
class MassEntry;
class MembersCard;
class ReadingsCard;
class ReasonBar;
class SegmentedSwitch;
class TargetsCard;

/// A group: its animals and their masses, its energy need, its targets, and what changed when.
class GroupPane : public QWidget {
  Q_OBJECT
 public:
  enum Sheet { Animals, Energy, Targets, History };
  GroupPane(AnimalDesk& desk, ReasonBar& reason, Starters starters, QWidget* parent = nullptr);
  void showSheet(int sheet);
  [[nodiscard]] MassEntry& entry() const { return *entry_; }
  [[nodiscard]] MassCard& mass() const { return *mass_; }
  [[nodiscard]] ReadingsCard& readings() const { return *readings_; }
  [[nodiscard]] EnergyCard& energy() const { return *energy_; }
  [[nodiscard]] TargetsCard& targets() const { return *targets_; }
  [[nodiscard]] HistoryCard& history() const { return *history_; }

 signals:
  /// A diet is wanted for the group that is shown.
  void dietWanted(const QString& group);
  void shownWanted(const tarebowl::ui::AnimalPlace& place);

 private:
  [[nodiscard]] QWidget* makeAnimals();
  void showPage();

  AnimalDesk& desk_;
  SegmentedSwitch* sheet_;
  QPushButton* design_;
  QStackedWidget* sheets_;
  MembersCard* members_;
  ReadingsCard* readings_;
  MassCard* mass_;
  MassEntry* entry_;
  EnergyCard* energy_;
  TargetsCard* targets_;
  HistoryCard* history_;
};

}  // namespace tarebowl::ui
