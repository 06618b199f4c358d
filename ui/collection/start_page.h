// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/room_hint.h"

class QLabel;

namespace tarebowl::ui {

/// What stands in every room while no collection is open: three ways in, and the ways to one that is there.
class StartPage : public RoomHint {
  Q_OBJECT
 public:
  explicit StartPage(QWidget* parent = nullptr);

  /// Why a collection could not be opened; empty: nothing is the matter.
  void say(const QString& trouble);

 signals:
  void sampleWanted();
  void importWanted();
  void openWanted();
  void serverWanted();
  void emptyWanted();

 private:
  void addLink(const QString& name, const QString& spoken, void (StartPage::*wanted)());

  QLabel* banner_;
};

}  // namespace tarebowl::ui
