// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace tarebowl::ui {

/// What stands in the room while there is no food to look at: three ways in.
class StartPage : public QWidget {
  Q_OBJECT
 public:
  explicit StartPage(QWidget* parent = nullptr);

 signals:
  void sampleWanted();
  void importWanted();
  void openWanted();
  void emptyWanted();
};

}  // namespace tarebowl::ui
