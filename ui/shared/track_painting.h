// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/ladder_track.h"

#include <QRectF>

class QPainter;

namespace tarebowl::ui {

struct Theme;

/// A part of a track, so high, about its middle line.
[[nodiscard]] QRectF partOfTrack(const QRectF& track, Span span, qreal height);

/// The track of a target: a line, and on it the zone in which the target is met, with an edge that can be
/// seen by those who do not see its colour.
void paintTrackWithZone(QPainter& painter, const QRectF& track, Span zone, const Theme& theme);

}  // namespace tarebowl::ui
