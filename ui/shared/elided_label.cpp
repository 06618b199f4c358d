// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/elided_label.h"

#include <QHelpEvent>
#include <QStylePainter>
#include <QToolTip>

#include <algorithm>

namespace tarebowl::ui {

QSize ElidedLabel::minimumSizeHint() const {
  constexpr int kLeastLetters = 6;
  const QSize whole = QLabel::sizeHint();
  if (wordWrap()) return QLabel::minimumSizeHint();
  return {std::min(whole.width(), kLeastLetters * fontMetrics().averageCharWidth()), whole.height()};
}

bool ElidedLabel::isCut() const {
  return !wordWrap() && fontMetrics().horizontalAdvance(text()) > contentsRect().width();
}

void ElidedLabel::paintEvent(QPaintEvent* event) {
  if (!isCut()) return QLabel::paintEvent(event);
  QStylePainter painter(this);
  const QString shown = fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width());
  painter.drawItemText(contentsRect(), static_cast<int>(alignment()), palette(), isEnabled(), shown,
                       foregroundRole());
}

bool ElidedLabel::event(QEvent* event) {
  if (event->type() != QEvent::ToolTip || !toolTip().isEmpty() || !isCut()) return QLabel::event(event);
  QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), text(), this);
  return true;
}

}  // namespace tarebowl::ui
