// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace tarebowl::ui {

class RotationCalendar;

/// What keys do in the calendar, in words: on the cell that the hand is on, which it stays on.
class RotationHandBar : public QWidget {
  Q_OBJECT
 public:
  explicit RotationHandBar(RotationCalendar& calendar, QWidget* parent = nullptr);
};

}  // namespace tarebowl::ui
