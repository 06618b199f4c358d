// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/animal_desk.h"

#include <QFrame>

class QComboBox;
class QLabel;
class QPushButton;

namespace tarebowl::ui {

class ModelStart;
class ReasonBar;
class TargetsLadder;

/// The target profile that a group is fed by: its versions, which of them is in force, and its rules.
class TargetsCard : public QFrame {
  Q_OBJECT
 public:
  /// starters: where a group without a profile may start from.
  TargetsCard(AnimalDesk& desk, ReasonBar& reason, Starters starters, QWidget* parent = nullptr);
  [[nodiscard]] TargetsLadder& ladder() const { return *ladder_; }
  [[nodiscard]] ModelStart& modelStart() const { return *modelStart_; }

 private:
  void build();
  void showPage();
  void showVersion();
  void fillVersions();
  void putInForce();
  void chooseProfile();
  [[nodiscard]] const ProfileInSight* shown() const;

  AnimalDesk& desk_;
  ReasonBar& reason_;
  QComboBox* profiles_;
  QComboBox* versions_;
  QPushButton* force_;
  QPushButton* discard_;
  QLabel* about_;
  TargetsLadder* ladder_;
  ModelStart* modelStart_;
  std::optional<AnimalPlace> place_;  // whose profile was last shown
  std::size_t known_ = 0;             // versions of the profile when it was last shown
};

}  // namespace tarebowl::ui
