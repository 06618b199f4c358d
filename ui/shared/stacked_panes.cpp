// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/stacked_panes.h"

#include <QEvent>
#include <QLayout>

namespace tarebowl::ui {

int heightForWords(const QWidget& pane, int width) {
  const QLayout* layout = pane.layout();
  return layout != nullptr && layout->hasHeightForWidth() ? layout->totalMinimumHeightForWidth(width) : 0;
}

StackedPanes::StackedPanes(QWidget* parent) : QSplitter(Qt::Vertical, parent) {
  setChildrenCollapsible(false);
}

void StackedPanes::fit() {
  for (int i = 0; i < count(); ++i) widget(i)->setMinimumHeight(heightForWords(*widget(i), width()));
}

bool StackedPanes::event(QEvent* event) {
  const bool isDone = QSplitter::event(event);
  if (event->type() == QEvent::LayoutRequest) fit();
  return isDone;
}

void StackedPanes::resizeEvent(QResizeEvent* event) {
  fit();
  QSplitter::resizeEvent(event);
}

}  // namespace tarebowl::ui
