// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/frame/focus_order.h"

#include <QScrollArea>

#include <algorithm>
#include <iterator>
#include <vector>

namespace tarebowl::ui {

namespace {

/// Brings what has the focus now back from where it was scrolled to.
void bringIntoSight(QWidget& widget) {
  constexpr int kMargin = 12;
  for (QWidget* part = widget.parentWidget(); part != nullptr; part = part->parentWidget())
    if (auto* area = qobject_cast<QScrollArea*>(part)) area->ensureWidgetVisible(&widget, kMargin, kMargin);
}

}  // namespace

bool moveFocus(QWidget& window, std::initializer_list<const QWidget*> parts, bool next) {
  const auto partOf = [&parts](const QWidget* widget) {
    return std::ranges::find_if(
        parts, [=](const QWidget* part) { return part != nullptr && part->isAncestorOf(widget); });
  };
  std::vector<QWidget*> order;
  for (QWidget* widget = window.nextInFocusChain(); widget != &window; widget = widget->nextInFocusChain())
    order.push_back(widget);
  std::ranges::stable_sort(order, {}, partOf);
  if (!next) std::ranges::reverse(order);
  const auto from = std::ranges::find(order, window.focusWidget());
  // What comes after it, then the others from the first one on.
  if (from != order.end())
    std::rotate(order.begin(), std::next(from), order.end());  // Clang 14 has no ranges::rotate
  for (QWidget* to : order) {
    const bool takesTab = (to->focusPolicy() & Qt::TabFocus) != 0 && to->focusProxy() == nullptr;
    if (!takesTab || to == window.focusWidget() || !to->isEnabled() || !to->isVisibleTo(&window) ||
        to->window() != &window)
      continue;
    to->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    bringIntoSight(*to);
    return true;
  }
  return false;
}

}  // namespace tarebowl::ui
