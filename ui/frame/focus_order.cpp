// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/focus_order.h"

#include <QScrollArea>

namespace tarebowl::ui {

namespace {

/// Brings what has the focus now back from where it was scrolled to.
void bringIntoSight(QWidget& widget) {
  constexpr int kMargin = 12;
  for (QWidget* part = widget.parentWidget(); part != nullptr; part = part->parentWidget())
    if (auto* area = qobject_cast<QScrollArea*>(part)) area->ensureWidgetVisible(&widget, kMargin, kMargin);
}

}  // namespace

bool moveFocus(QWidget& window, bool next) {
  QWidget* const from = window.focusWidget() != nullptr ? window.focusWidget() : &window;
  const auto step = [next](const QWidget* widget) {
    return next ? widget->nextInFocusChain() : widget->previousInFocusChain();
  };
  for (QWidget* to = step(from); to != from; to = step(to)) {
    const bool takesTab = (to->focusPolicy() & Qt::TabFocus) != 0 && to->focusProxy() == nullptr;
    if (!takesTab || !to->isEnabled() || !to->isVisibleTo(&window) || to->window() != &window) continue;
    to->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    bringIntoSight(*to);
    return true;
  }
  return false;
}

}  // namespace tarebowl::ui
