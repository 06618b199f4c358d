// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/frame/room_hints.h"

#include <QStackedWidget>

#include <optional>

namespace tarebowl::ui {

class RoomHint;
class StartPage;

/// What stands in the place of a room: the room itself, the ways in while nothing is open, or what an empty
/// room is for. What needs more room than there is (a small screen, everything at twice its size) is scrolled
/// to, never cut.
class RoomStage : public QStackedWidget {
  Q_OBJECT
 public:
  RoomStage();

  void addRoom(QWidget& room);

  /// Each takes the focus over where it was on what stood here before.
  void showRoom(QWidget& room);
  void showStart();
  void showHint(const EmptyRoom& empty);
  /// Why a collection could not be opened, beside the ways in; empty: nothing is the matter.
  void say(const QString& trouble);

 signals:
  void roomWanted(int number);
  /// The ways in are wanted for the first time: most starts need none.
  void startBuilt(tarebowl::ui::StartPage* start);

 private:
  void bring(QWidget& shown);
  /// A place of its own on the stage, in which it is scrolled where it is larger.
  void addPage(QWidget& page);
  [[nodiscard]] QWidget* placeOf(const QWidget& page) const;

  StartPage* start_ = nullptr;
  QString trouble_;
  RoomHint* hint_ = nullptr;
  std::optional<EmptyRoom> hinted_;
};

}  // namespace tarebowl::ui
