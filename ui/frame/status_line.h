// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/room.h"
#include "ui/shared/state_mark.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace tarebowl::ui {

class SegmentedSwitch;

/// One line below the room: saved state, units in force, sample or not, what the room does, and who is at the
/// keyboard.
class StatusLine : public QWidget {
  Q_OBJECT
 public:
  explicit StatusLine(QWidget* parent = nullptr);
  void show(const RoomState& state);
  void setPerson(const QString& name);

 signals:
  /// Energy shall be read in another unit.
  void energyChosen(tarebowl::ui::EnergyUnit energy);
  /// Somebody else sat down at the keyboard and typed a name.
  void personChanged(const QString& name);

 private:
  /// what: what the label is about, for a screen reader; its text is its name.
  QLabel* add(const QString& what);

  MarkWidget* savedMark_;
  MarkWidget* unsavedMark_;
  QLabel* saved_;
  QLabel* units_;
  QLabel* sample_;
  QLabel* note_;
  SegmentedSwitch* energy_;
  QLineEdit* person_;
};

}  // namespace tarebowl::ui
