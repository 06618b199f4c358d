// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/keys_ahead.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

#include <utility>

namespace tarebowl::ui {
namespace {

bool isEnter(int key) {
  return key == Qt::Key_Return || key == Qt::Key_Enter;
}

}  // namespace

KeysAhead::KeysAhead(KitchenDesk& desk, QLineEdit& field) : QObject(&field), desk_(desk), field_(field) {
  field_.installEventFilter(this);
  connect(&desk_, &KitchenDesk::settled, this, &KeysAhead::handOn);
  connect(&desk_, &KitchenDesk::opened, this, [this] { held_.clear(); });
  connect(&desk_.collection(), &OpenCollection::refused, this, [this] { held_.clear(); });
}

bool KeysAhead::holds(const QKeyEvent& pressed) const {
  const bool isPlain = (pressed.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier &&
                       pressed.key() != Qt::Key_Tab && pressed.key() != Qt::Key_Backtab &&
                       pressed.key() != Qt::Key_Escape;
  return isPlain && desk_.isUnsettled();
}

bool KeysAhead::eventFilter(QObject* watched, QEvent* event) {
  if (watched != &field_ || event->type() != QEvent::KeyPress || handsOn_) return false;
  const auto& pressed = *static_cast<QKeyEvent*>(event);
  if (!holds(pressed)) return false;
  held_.push_back({pressed.key(), pressed.modifiers(), pressed.text(), desk_.item() == nullptr});
  return true;
}

void KeysAhead::press(const Key& key) {
  QKeyEvent pressed(QEvent::KeyPress, key.key, key.modifiers, key.text);
  handsOn_ = true;
  QCoreApplication::sendEvent(&field_, &pressed);
  handsOn_ = false;
}

void KeysAhead::handOn() {
  while (!held_.empty() && !desk_.isUnsettled()) {
    const Key key = held_.front();
    held_.pop_front();
    // Another widget has the hand now (a reason is asked for), or there is nothing to weigh.
    if (!field_.isEnabled() || !field_.hasFocus() || (isEnter(key.key) && key.isBlind)) return held_.clear();
    press(key);
    const bool asks = isEnter(key.key) && !desk_.isUnsettled() && !field_.text().isEmpty();
    if (asks) return held_.clear();
  }
}

}  // namespace tarebowl::ui
