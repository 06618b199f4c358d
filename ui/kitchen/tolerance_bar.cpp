// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kitchen/tolerance_bar.h"

#include "ui/kitchen/kitchen_text.h"
#include "ui/shared/state_mark.h"
#include "ui/shared/theme.h"

#include <QPainter>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr double kTolerancesInSight = 4.0;  // to either side of the plan
constexpr int kTrackHeight = 26;
constexpr int kHeight = 76;

}  // namespace

ToleranceBar::ToleranceBar(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  tell();
}

void ToleranceBar::setPlan(quantity::Grams planned, quantity::Grams tolerance) {
  planned_ = planned;
  tolerance_ = tolerance;
  tell();
}

void ToleranceBar::setWeight(std::optional<quantity::Grams> actual) {
  actual_ = actual;
  tell();
}

std::optional<intake::WeightState> ToleranceBar::state() const {
  if (!actual_) return std::nullopt;
  return intake::stateOf(planned_, *actual_, tolerance_);
}

void ToleranceBar::tell() {
  setAccessibleName(state() ? tr("Tolerance: %1").arg(wordOf(*state())) : tr("Tolerance: no weight yet"));
  update();
}

QSize ToleranceBar::sizeHint() const {
  return {360, kHeight};
}

void ToleranceBar::paintTrack(QPainter& painter, const QRectF& track) const {
  const Theme& theme = currentTheme();
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.line);
  painter.drawRoundedRect(track, 6, 6);
  const double half = track.width() / 2.0;
  const double zone = half / kTolerancesInSight;
  painter.setPen(QPen(theme.met, 1.0));
  painter.setBrush(theme.zone);
  painter.drawRect(QRectF(track.center().x() - zone, track.top(), 2 * zone, track.height()));
  painter.setPen(Qt::NoPen);
  if (!actual_ || !(tolerance_ > quantity::Grams(0))) return;
  const double away = std::clamp((*actual_ - planned_) / tolerance_, -kTolerancesInSight, kTolerancesInSight);
  painter.setBrush(theme.marker);
  painter.drawRect(QRectF(track.center().x() + away * zone - 3, track.top() - 6, 6, track.height() + 12));
}

void ToleranceBar::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintTrack(painter, QRectF(4, 8, width() - 8, kTrackHeight));
  const auto now = state();
  if (!now) return;
  const Mark mark = markOf(*now);
  QFont font = this->font();
  font.setBold(true);
  painter.setFont(font);
  const double side = painter.fontMetrics().height() * 0.7;
  const double top = kTrackHeight + 18;
  const QString word = wordOf(*now);
  const double width = side + 8 + painter.fontMetrics().horizontalAdvance(word);
  const double left = (this->width() - width) / 2.0;
  paintMark(painter, QRectF(left, top + 2, side, side), mark, currentTheme());
  painter.setPen(colorOf(mark, currentTheme()));
  painter.drawText(QRectF(left + side + 8, top - 2, width, painter.fontMetrics().height()),
                   Qt::AlignLeft | Qt::AlignVCenter, word);
}

}  // namespace tarebowl::ui
