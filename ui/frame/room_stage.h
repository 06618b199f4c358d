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
/// room is for.
class RoomStage : public QStackedWidget {
  Q_OBJECT
 public:
  RoomStage();

  [[nodiscard]] StartPage& start() const { return *start_; }
  void addRoom(QWidget& room) { addWidget(&room); }

  /// Each takes the focus over where it was on what stood here before.
  void showRoom(QWidget& room) { bring(&room); }
  void showStart();
  void showHint(const EmptyRoom& empty);

 signals:
  void roomWanted(int number);

 private:
  void bring(QWidget* shown);

  StartPage* start_;
  RoomHint* hint_ = nullptr;
  std::optional<EmptyRoom> hinted_;
};

}  // namespace tarebowl::ui
