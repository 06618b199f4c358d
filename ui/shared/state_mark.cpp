// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/state_mark.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {
namespace {

QPainterPath triangle(const QRectF& box, bool pointsDown) {
  QPainterPath path;
  const qreal base = pointsDown ? box.top() : box.bottom();
  const qreal tip = pointsDown ? box.bottom() : box.top();
  path.moveTo(box.left(), base);
  path.lineTo(box.right(), base);
  path.lineTo(box.center().x(), tip);
  path.closeSubpath();
  return path;
}

void paintHalfDisc(QPainter& painter, const QRectF& box, const QColor& color) {
  const qreal pen = std::max(1.2, box.width() / 9.0);
  const QRectF ring = box.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2);
  painter.setPen(QPen(color, pen));
  painter.setBrush(Qt::NoBrush);
  painter.drawEllipse(ring);
  painter.setPen(Qt::NoPen);
  painter.setBrush(color);
  painter.drawPie(ring, 90 * 16, 180 * 16);
}

void paintQuestionMark(QPainter& painter, const QRectF& box, const QColor& color) {
  QFont font = painter.font();
  font.setBold(true);
  font.setPixelSize(std::max(8, static_cast<int>(box.height() * 1.25)));
  painter.setFont(font);
  painter.setPen(color);
  painter.drawText(box.adjusted(-4, -4, 4, 4), Qt::AlignCenter, QStringLiteral("?"));
}

}  // namespace

Mark markOf(diet::TargetState state) {
  switch (state) {
    case diet::TargetState::Met:
      return Mark::Met;
    case diet::TargetState::AtMin:
    case diet::TargetState::AtMax:
      return Mark::AtLimit;
    case diet::TargetState::Short:
      return Mark::Lacking;
    case diet::TargetState::Over:
      return Mark::Over;
    case diet::TargetState::Unknown:
      break;
  }
  return Mark::Unknown;
}

QString wordOf(Mark mark) {
  switch (mark) {
    case Mark::Met:
      return QCoreApplication::translate("State", "met");
    case Mark::AtLimit:
      return QCoreApplication::translate("State", "at limit");
    case Mark::Lacking:
      return QCoreApplication::translate("State", "short");
    case Mark::Over:
      return QCoreApplication::translate("State", "over");
    case Mark::Unknown:
      break;
  }
  return QCoreApplication::translate("State", "unknown");
}

QColor colorOf(Mark mark, const Theme& theme) {
  switch (mark) {
    case Mark::Met:
      return theme.met;
    case Mark::AtLimit:
      return theme.atLimit;
    case Mark::Lacking:
      return theme.lacking;
    case Mark::Over:
      return theme.over;
    case Mark::Unknown:
      break;
  }
  return theme.unknown;
}

void paintMark(QPainter& painter, const QRectF& box, Mark mark, const Theme& theme) {
  const QColor color = colorOf(mark, theme);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(color);
  const qreal inset = box.width() * 0.12;
  switch (mark) {
    case Mark::Met:
      painter.drawEllipse(box.adjusted(inset, inset, -inset, -inset));
      break;
    case Mark::AtLimit:
      paintHalfDisc(painter, box, color);
      break;
    case Mark::Lacking:
      painter.drawPath(triangle(box.adjusted(0, inset, 0, -inset / 2), true));
      break;
    case Mark::Over:
      painter.drawPath(triangle(box.adjusted(0, inset / 2, 0, -inset), false));
      break;
    case Mark::Unknown:
      paintQuestionMark(painter, box, color);
      break;
  }
  painter.restore();
}

MarkWidget::MarkWidget(Mark mark, QWidget* parent) : QWidget(parent), mark_(mark) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setAccessibleName(wordOf(mark));
}

QSize MarkWidget::sizeHint() const {
  const int height = fontMetrics().height();
  return {height * 3 / 4, height};
}

void MarkWidget::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  const qreal side = fontMetrics().height() * 0.55;
  const QRectF box((width() - side) / 2.0, (height() - side) / 2.0, side, side);
  paintMark(painter, box, mark_, currentTheme());
}

}  // namespace tarebowl::ui
