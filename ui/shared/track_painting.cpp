// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/track_painting.h"

#include "ui/shared/theme.h"

#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {

QRectF partOfTrack(const QRectF& track, Span span, qreal height) {
  const qreal left = track.left() + span.from * track.width();
  const qreal right = track.left() + span.to * track.width();
  return {left, track.center().y() - height / 2, std::max(right - left, 2.0), height};
}

void paintTrackWithZone(QPainter& painter, const QRectF& track, Span zone, const Theme& theme) {
  constexpr qreal kLine = 4.0;
  constexpr qreal kZone = 11.0;
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  painter.drawRoundedRect(partOfTrack(track, {0.0, 1.0}, kLine), 2, 2);
  painter.setPen(QPen(theme.met, 1.0));
  painter.setBrush(theme.zone);
  painter.drawRoundedRect(partOfTrack(track, zone, kZone), 2.5, 2.5);
  painter.setPen(Qt::NoPen);
}

}  // namespace tarebowl::ui
