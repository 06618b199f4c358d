// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/state_mark.h"

#include <QWidget>

class QLabel;

namespace tarebowl::ui {

/// What holds for the whole window at this moment.
struct WindowState {
  bool saved = true;
  bool invented = false;  ///< part of the invented sample
  QString energyMethod;   ///< how energy is worked out
  QString solving;        ///< what the solver does or did
};

/// One line below the room: saved state, units in force, sample or not, how the diet was found.
class StatusLine : public QWidget {
  Q_OBJECT
 public:
  explicit StatusLine(QWidget* parent = nullptr);
  void show(const WindowState& state);

 private:
  QLabel* add(const QString& accessibleName);

  MarkWidget* savedMark_;
  MarkWidget* unsavedMark_;
  QLabel* saved_;
  QLabel* units_;
  QLabel* sample_;
  QLabel* solving_;
};

}  // namespace tarebowl::ui
