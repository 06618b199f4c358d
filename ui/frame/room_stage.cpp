// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/room_stage.h"

#include "ui/collection/start_page.h"
#include "ui/shared/room_hint.h"

#include <QApplication>
#include <QPushButton>
#include <QScrollArea>

#include <utility>

namespace tarebowl::ui {

namespace {

/// A page's place. It asks no page how large it wants to be: that would lay out and polish rooms that nobody
/// has looked at yet, at every start.
class Place : public QScrollArea {
 public:
  explicit Place(QWidget& page) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setFocusProxy(&page);
    setWidget(&page);
  }
  [[nodiscard]] QSize sizeHint() const override { return minimumSizeHint(); }
  [[nodiscard]] QSize minimumSizeHint() const override {
    constexpr QSize kLeast{240, 240};
    return kLeast;
  }
};

}  // namespace

RoomStage::RoomStage() = default;

void RoomStage::addPage(QWidget& page) {
  addWidget(new Place(page));
}

void RoomStage::addRoom(QWidget& room) {
  addPage(room);
}

void RoomStage::showRoom(QWidget& room) {
  bring(room);
}

void RoomStage::showStart() {
  if (start_ == nullptr) {
    start_ = new StartPage;
    start_->say(trouble_);
    addPage(*start_);
    emit startBuilt(start_);
  }
  bring(*start_);
}

void RoomStage::say(const QString& trouble) {
  trouble_ = trouble;
  if (start_ != nullptr) start_->say(trouble);
}

void RoomStage::showHint(const EmptyRoom& empty) {
  if (hint_ != nullptr && empty == hinted_) return bring(*hint_);
  hinted_ = empty;
  RoomHint* const before = std::exchange(hint_, new RoomHint(empty.heading));
  hint_->addText(empty.forWhat);
  connect(&hint_->addWay(empty.first, empty.firstWhy), &QPushButton::clicked, this,
          [this, first = empty.firstRoom] { emit roomWanted(first); });
  addPage(*hint_);
  bring(*hint_);
  if (before != nullptr) placeOf(*before)->deleteLater();  // its own button may have asked for another room
}

QWidget* RoomStage::placeOf(const QWidget& page) const {
  return page.parentWidget()->parentWidget();  // the place's viewport is between them
}

void RoomStage::bring(QWidget& shown) {
  QWidget* const place = placeOf(shown);
  const bool takesFocus = isAncestorOf(QApplication::focusWidget()) && currentWidget() != place;
  setCurrentWidget(place);
  if (takesFocus) place->setFocus();
}

}  // namespace tarebowl::ui
