// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/zone_delegate.h"

#include "ui/animals/targets_model.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/theme.h"
#include "ui/shared/track_painting.h"

#include <QPainter>

namespace tarebowl::ui {
namespace {

constexpr int kWidth = 120;

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
  paintTrackWithZone(*painter, track, scale.zone(), theme);
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
