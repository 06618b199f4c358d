// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/zone_delegate.h"

#include "ui/animals/targets_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/ladder_track.h"

#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kWidth = 120;

QRectF stretch(const QRectF& track, Span span, qreal height) {
  const qreal left = track.left() + span.from * track.width();
  const qreal right = track.left() + span.to * track.width();
  return {left, track.center().y() - height / 2, std::max(right - left, 2.0), height};
}

}  // namespace

void ZoneDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
  const Theme& theme = currentTheme();
  paintRowGround(*painter, option, theme);
  const auto* model = qobject_cast<const TargetsModel*>(index.model());
  const TargetRow* row = model == nullptr ? nullptr : model->rowAt(index);
  if (row == nullptr || (!row->min && !row->max)) return;
  const TrackScale scale(row->min, row->max);
  const QRectF track = QRectF(option.rect).adjusted(7, 0, -7, 0);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(Qt::NoPen);
  painter->setBrush(theme.line);
  painter->drawRoundedRect(stretch(track, {0.0, 1.0}, 4.0), 2, 2);
  painter->setBrush(theme.zone);
  painter->drawRoundedRect(stretch(track, scale.zone(), 11.0), 2.5, 2.5);
  if (row->preferred) {
    const qreal x = track.left() + scale.position(*row->preferred) * track.width();
    painter->fillRect(QRectF(x - 1, track.center().y() - 8, 2, 16), theme.marker);
  }
  painter->restore();
}

QSize ZoneDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& /*index*/) const {
  return {kWidth, option.fontMetrics.height() + 9};
}

}  // namespace tarebowl::ui
