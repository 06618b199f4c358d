// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/balance_ladder_delegate.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/icons.h"
#include "ui/shared/track_painting.h"

#include <QPainter>
#include <QPainterPath>

namespace tarebowl::ui {
namespace {

/// Half width of the whisker in standard deviations: about 19 times of 20 under normal scatter.
constexpr double kWhiskerSd = 1.96;

void paintHatch(QPainter& painter, const QRectF& box, const QColor& color) {
  painter.save();
  painter.setClipRect(box);
  painter.setPen(QPen(color, 1.2));
  for (qreal x = box.left() - box.height(); x < box.right(); x += 5.0)
    painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
  painter.restore();
}

/// A value beyond the end of the track: an arrowhead that points to where it lies.
void paintBeyond(QPainter& painter, const QRectF& track, bool toTheRight, const QColor& color) {
  const qreal tip = toTheRight ? track.right() : track.left();
  const qreal back = toTheRight ? tip - 9 : tip + 9;
  const qreal y = track.center().y();
  QPainterPath head;
  head.moveTo(tip, y);
  head.lineTo(back, y - 5.5);
  head.lineTo(back, y + 5.5);
  head.closeSubpath();
  painter.fillPath(head, color);
}

void paintMarker(QPainter& painter, const QRectF& track, const Rung& rung, const TrackScale& scale,
                 const QColor& color) {
  if (!rung.value || rung.mark == Mark::Unknown) return;
  const Span whisker = scale.whisker(*rung.value, kWhiskerSd * rung.sd);
  if (whisker.to > whisker.from) painter.fillRect(partOfTrack(track, whisker, 2.0), color);
  if (scale.isBelow(*rung.value) || scale.isAbove(*rung.value)) {
    paintBeyond(painter, track, scale.isAbove(*rung.value), color);
    return;
  }
  const qreal x = track.left() + scale.position(*rung.value) * track.width();
  const qreal y = track.center().y();
  painter.fillRect(QRectF(x - 1, y - 8, 2, 15), color);
  QPainterPath head;
  head.moveTo(x - 4.5, y - 9);
  head.lineTo(x + 4.5, y - 9);
  head.lineTo(x, y - 2.5);
  head.closeSubpath();
  painter.fillPath(head, color);
}

void paintTrack(QPainter& painter, const QRect& cell, const Rung& rung, const Theme& theme) {
  const QRectF track = QRectF(cell).adjusted(6, 0, -8, 0);
  const TrackScale scale(rung.min, rung.max);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  paintTrackWithZone(painter, track, scale.zone(), theme);
  const auto unknown = scale.unknown(rung.value, rung.coverage);
  if (unknown && unknown->to > unknown->from)
    paintHatch(painter, partOfTrack(track, *unknown, 11.0), theme.soft);
  paintMarker(painter, track, rung, scale, theme.marker);
  painter.restore();
}

void paintState(QPainter& painter, const QStyleOptionViewItem& option, const Rung& rung, const Theme& theme) {
  const qreal side = option.fontMetrics.height() * 0.5;
  const QRectF cell(option.rect);
  const QRectF box(cell.left() + 4, cell.center().y() - side / 2 + 0.5, side, side);
  paintMark(painter, box, rung.mark, theme);
  painter.setFont(option.font);
  painter.setPen(colorOf(rung.mark, theme));
  painter.drawText(cell.adjusted(side + 10, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, wordOf(rung.mark));
}

constexpr int kHardRoom = 18;

/// A hard rule carries a padlock beside its name.
void paintName(QPainter& painter, QStyleOptionViewItem option, const Rung& rung, const Theme& theme) {
  if (rung.hard) {
    const QRectF cell(option.rect);
    paintIcon(painter, QRectF(cell.right() - 15, cell.center().y() - 6, 12, 12), QStringLiteral("lock"),
              theme.soft);
    option.rect.adjust(0, 0, -kHardRoom, 0);
  }
  paintText(painter, option, rung.name, rung.remark, theme);
}

}  // namespace

void BalanceLadderDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                                  const QModelIndex& index) const {
  const auto rung = index.data(kRungRole).value<Rung>();
  const Theme& theme = currentTheme();
  paintRowGround(*painter, option, theme);
  switch (index.column()) {
    case RungName:
      paintName(*painter, option, rung, theme);
      break;
    case RungValue:
      paintValue(*painter, option, rung.valueText, rung.unit, theme);
      break;
    case RungTrack:
      paintTrack(*painter, option.rect, rung, theme);
      break;
    default:
      paintState(*painter, option, rung, theme);
      break;
  }
}

QSize BalanceLadderDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const auto rung = index.data(kRungRole).value<Rung>();
  const QFontMetrics& metrics = option.fontMetrics;
  const int height = metrics.height() + 9;
  switch (index.column()) {
    case RungName:
      return {metrics.horizontalAdvance(rung.name + QLatin1Char(' ') + rung.remark) + 14 +
                  (rung.hard ? kHardRoom : 0),
              height};
    case RungValue:
      return {valueWidth(option, rung.valueText, rung.unit) + 14, height};
    case RungTrack:
      return {90, height};
    default:
      return {metrics.horizontalAdvance(wordOf(Mark::Unknown)) + metrics.height() / 2 + 18, height};
  }
}

}  // namespace tarebowl::ui
