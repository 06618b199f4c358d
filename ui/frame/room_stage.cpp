// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/room_stage.h"

#include "ui/collection/start_page.h"
#include "ui/shared/room_hint.h"

#include <QApplication>
#include <QPushButton>

#include <utility>

namespace tarebowl::ui {

RoomStage::RoomStage() : start_(new StartPage) {
  addWidget(start_);
}

void RoomStage::showStart() {
  bring(start_);
}

void RoomStage::showHint(const EmptyRoom& empty) {
  if (hint_ != nullptr && empty == hinted_) return bring(hint_);
  hinted_ = empty;
  RoomHint* const before = std::exchange(hint_, new RoomHint(empty.heading));
  hint_->addText(empty.forWhat);
  connect(&hint_->addWay(empty.first, empty.firstWhy), &QPushButton::clicked, this,
          [this, first = empty.firstRoom] { emit roomWanted(first); });
  addWidget(hint_);
  bring(hint_);
  if (before != nullptr) before->deleteLater();  // its own button may have asked for another room
}

void RoomStage::bring(QWidget* shown) {
  const bool takesFocus = isAncestorOf(QApplication::focusWidget()) && currentWidget() != shown;
  setCurrentWidget(shown);
  if (takesFocus) shown->setFocus();
}

}  // namespace tarebowl::ui
