// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/frame/rail_menu.h"

namespace tarebowl::ui {

/// The button at the foot of the rail: the guide, what a control is, and whose program this is.
class HelpMenu : public RailMenu {
  Q_OBJECT
 public:
  explicit HelpMenu(QWidget* parent = nullptr);

 signals:
  void guideWanted();
  /// Of the control that had the focus before the menu opened.
  void explanationWanted();
  void aboutWanted();
};

/// Name, version, licence, and what the program does not decide.
[[nodiscard]] QString aboutText();

}  // namespace tarebowl::ui
