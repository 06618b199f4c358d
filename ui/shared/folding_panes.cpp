// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/folding_panes.h"

#include "ui/shared/stacked_panes.h"

#include <QEvent>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kEnoughHeight = 260;  // for what can be scrolled within itself

int leastWidth(const QWidget& pane) {
  return std::max(pane.minimumSizeHint().width(), pane.minimumWidth());
}

int heightBelow(const QWidget& pane, int width) {
  const int asked =
      std::max(pane.minimumSizeHint().height(), std::min(pane.sizeHint().height(), kEnoughHeight));
  return std::max({asked, heightForWords(pane, width), 0});
}

}  // namespace

FoldingPanes::FoldingPanes(QWidget* parent) : QSplitter(Qt::Horizontal, parent) {
  setHandleWidth(1);
  setChildrenCollapsible(false);
}

QList<QWidget*> FoldingPanes::shown() const {
  QList<QWidget*> panes;
  for (int i = 0; i < count(); ++i)
    if (!widget(i)->isHidden()) panes << widget(i);
  return panes;
}

int FoldingPanes::widthBeside() const {
  int width = 0;
  for (const QWidget* pane : shown()) width += leastWidth(*pane) + (width > 0 ? handleWidth() : 0);
  return width;
}

QSize FoldingPanes::minimumSizeHint() const {
  int width = 0;
  for (const QWidget* pane : shown()) width = std::max(width, leastWidth(*pane));
  return {width, QSplitter::minimumSizeHint().height()};
}

QSize FoldingPanes::sizeHint() const {
  if (isFolded()) return QSplitter::sizeHint();
  return {QSplitter::sizeHint().width(), minimumSizeHint().height()};
}

void FoldingPanes::setWidths(const QList<int>& widths) {
  beside_ = widths;
  setSizes(widths);
}

QList<int> FoldingPanes::widthsAsked() const {
  QList<int> widths;
  for (int i = 0; i < count(); ++i) widths << widget(i)->sizeHint().width();
  return widths;
}

void FoldingPanes::fit() {
  const bool mustFold = width() < widthBeside();
  if (mustFold != isFolded()) {
    if (mustFold && isVisible()) beside_ = sizes();  // before, they have not been laid out
    setOrientation(mustFold ? Qt::Vertical : Qt::Horizontal);
    if (!mustFold) setSizes(beside_.isEmpty() ? widthsAsked() : beside_);
    updateGeometry();
  }
  for (QWidget* pane : shown()) pane->setMinimumHeight(mustFold ? heightBelow(*pane, width()) : 0);
}

bool FoldingPanes::event(QEvent* event) {
  const bool isDone = QSplitter::event(event);
  if (event->type() == QEvent::LayoutRequest) fit();
  return isDone;
}

void FoldingPanes::resizeEvent(QResizeEvent* event) {
  fit();
  QSplitter::resizeEvent(event);
}

}  // namespace tarebowl::ui
