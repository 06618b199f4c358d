// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/time_chart.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/theme.h"

#include <QAbstractSeries>
#include <QChart>
#include <QDateTimeAxis>
#include <QEvent>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <QValueAxis>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr double kWheelStep = 1.25;
constexpr double kSwatch = 20.0;
constexpr double kLegendGap = 14.0;
constexpr double kLegendRow = 17.0;
constexpr int kPartMoved = 4;  // of what is in sight, by a key

}  // namespace

double millisAt(QDate day, int hour) {
  return static_cast<double>(QDateTime(day, QTime(hour, 0), Qt::UTC).toMSecsSinceEpoch());
}

TimeChart::TimeChart(const QString& accessibleName, QWidget* parent) : BareChart(parent) {
  setAccessibleName(accessibleName);
  setToolTip({});
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setFocusPolicy(Qt::StrongFocus);
  viewport()->setMouseTracking(true);
  setMinimumHeight(150);
}

void TimeChart::setSpan(const DaySpan& span) {
  span_ = span;
  showDays();
}

void TimeChart::showDays() {
  if (days_ == nullptr || !span_.from.isValid()) return;
  days_->setFormat(span_.days() > 400   ? QStringLiteral("MMM yyyy")
                   : span_.days() > 120 ? QStringLiteral("d MMM yy")
                                        : QStringLiteral("d MMM"));
  days_->setTickCount(std::clamp(span_.days() + 1, 2, 7));
  days_->setRange(QDateTime(span_.from, QTime(0, 0), Qt::UTC),
                  QDateTime(span_.until.addDays(1), QTime(0, 0), Qt::UTC));
  viewport()->update();
}

void TimeChart::beginAnew(double low, double high, const QString& labelFormat) {
  chart()->removeAllSeries();
  for (QAbstractAxis* axis : chart()->axes()) {
    chart()->removeAxis(axis);
    delete axis;
  }
  const Theme& theme = currentTheme();
  days_ = new QDateTimeAxis;
  values_ = new QValueAxis;
  values_->setRange(low, high > low ? high : low + 1.0);
  values_->setLabelFormat(labelFormat);
  values_->setTickCount(4);
  values_->applyNiceNumbers();
  chart()->addAxis(days_, Qt::AlignBottom);
  chart()->addAxis(values_, Qt::AlignLeft);
  for (QAbstractAxis* axis : std::initializer_list<QAbstractAxis*>{days_, values_}) {
    axis->setLabelsColor(theme.soft);
    axis->setLabelsFont(smaller(font()));
    axis->setGridLineColor(theme.line);
    axis->setLinePenColor(theme.line);
  }
  days_->setGridLineVisible(false);
  showDays();
}

void TimeChart::place(QAbstractSeries& series) {
  chart()->addSeries(&series);
  series.attachAxis(days_);
  series.attachAxis(values_);
}

void TimeChart::setLegend(std::vector<LegendEntry> entries) {
  legend_ = std::move(entries);
  layOutLegend();
}

void TimeChart::layOutLegend() {
  constexpr double kLeft = 8.0;
  const QFontMetricsF measure(smaller(font()));
  legendAt_.clear();
  QPointF at(kLeft, 2.0);
  for (const LegendEntry& entry : legend_) {
    const double wide = kSwatch + measure.horizontalAdvance(entry.name) + kLegendGap;
    if (at.x() > kLeft && at.x() + wide > width()) at = {kLeft, at.y() + kLegendRow};
    legendAt_.push_back(at);
    at.rx() += wide;
  }
  const int height = legend_.empty() ? 0 : static_cast<int>(at.y() + kLegendRow);
  chart()->setMargins({0, height, 0, 0});
}

void TimeChart::drawForeground(QPainter* painter, const QRectF& rect) {
  BareChart::drawForeground(painter, rect);
  const QFontMetricsF measure(smaller(font()));
  painter->save();
  painter->setFont(smaller(font()));
  for (std::size_t i = 0; i < legendAt_.size(); ++i) {
    const LegendEntry& entry = legend_[i];
    const QRectF swatch(legendAt_[i].x(), legendAt_[i].y() + 3.0, kSwatch - 6.0, kLegendRow - 8.0);
    if (entry.isPatch) {
      painter->fillRect(swatch, entry.pen.color());
    } else {
      painter->setPen(entry.pen);
      painter->drawLine(QPointF(swatch.left(), swatch.center().y()),
                        QPointF(swatch.right(), swatch.center().y()));
    }
    painter->setPen(currentTheme().ink);
    painter->drawText(QPointF(legendAt_[i].x() + kSwatch, legendAt_[i].y() + measure.ascent()), entry.name);
  }
  painter->restore();
}

void TimeChart::resizeEvent(QResizeEvent* event) {
  BareChart::resizeEvent(event);
  layOutLegend();
}

double TimeChart::xOf(QDate day) const {
  const QRectF plot = chart()->plotArea();
  return plot.left() + plot.width() * static_cast<double>(span_.from.daysTo(day)) / span_.days();
}

double TimeChart::yOf(double value) const {
  const QRectF plot = chart()->plotArea();
  if (values_ == nullptr) return plot.bottom();
  return plot.bottom() - plot.height() * (value - values_->min()) / (values_->max() - values_->min());
}

double TimeChart::top() const {
  return values_ == nullptr ? 1.0 : values_->max();
}

double TimeChart::bottom() const {
  return values_ == nullptr ? 0.0 : values_->min();
}

void TimeChart::paintMissing(QPainter& painter, const std::vector<ChartDays>& points) const {
  const QRectF plot = chart()->plotArea();
  QColor ink = currentTheme().unknown;
  ink.setAlphaF(0.35F);
  for (const ChartDays& point : points) {
    if (!point.isMissing()) continue;
    const QRectF column(xOf(point.span.from), plot.top(),
                        xOf(point.span.until.addDays(1)) - xOf(point.span.from), plot.height());
    painter.fillRect(column.intersected(plot), QBrush(ink, Qt::BDiagPattern));
  }
}

QDate TimeChart::dayAt(double x) const {
  const QRectF plot = chart()->plotArea();
  const double share = plot.width() > 0.0 ? (x - plot.left()) / plot.width() : 0.0;
  return span_.from.addDays(static_cast<qint64>(std::floor(share * span_.days())));
}

void TimeChart::zoom(double factor, QDate about) {
  const int days = std::max(1, static_cast<int>(std::lround(span_.days() / factor)));
  const double share = static_cast<double>(span_.from.daysTo(about)) / span_.days();
  const QDate from = about.addDays(-static_cast<qint64>(std::lround(share * days)));
  emit spanSought({from, from.addDays(days - 1)});
}

void TimeChart::move(int days) {
  emit spanSought({span_.from.addDays(days), span_.until.addDays(days)});
}

void TimeChart::keyPressEvent(QKeyEvent* event) {
  const QDate middle = span_.from.addDays(span_.days() / 2);
  const int part = std::max(1, span_.days() / kPartMoved);
  switch (event->key()) {
    case Qt::Key_Plus:
      return zoom(2.0, middle);
    case Qt::Key_Minus:
      return zoom(0.5, middle);
    case Qt::Key_Left:
      return move(-part);
    case Qt::Key_Right:
      return move(part);
    case Qt::Key_0:
      emit allSought();
      return;
    default:
      BareChart::keyPressEvent(event);
  }
}

void TimeChart::wheelEvent(QWheelEvent* event) {
  const QPoint turned = event->angleDelta();
  if (std::abs(turned.x()) > std::abs(turned.y()))
    move(turned.x() > 0 ? -std::max(1, span_.days() / 20) : std::max(1, span_.days() / 20));
  else
    zoom(turned.y() > 0 ? kWheelStep : 1.0 / kWheelStep, dayAt(event->position().x()));
  event->accept();
}

void TimeChart::mousePressEvent(QMouseEvent* event) {
  held_ = event->pos();
  heldSpan_ = span_;
  setFocus();
}

void TimeChart::mouseMoveEvent(QMouseEvent* event) {
  if (!held_) {
    const QString text =
        chart()->plotArea().contains(event->pos()) ? told(dayAt(event->pos().x())) : QString();
    QToolTip::showText(event->globalPosition().toPoint(), text, this);
    return;
  }
  const double dayWidth = chart()->plotArea().width() / std::max(1, heldSpan_.days());
  const auto moved =
      static_cast<int>(std::lround((held_->x() - event->pos().x()) / std::max(0.01, dayWidth)));
  const DaySpan sought{heldSpan_.from.addDays(moved), heldSpan_.until.addDays(moved)};
  if (sought != span_) emit spanSought(sought);
}

void TimeChart::mouseReleaseEvent(QMouseEvent* /*event*/) {
  held_.reset();
}

void TimeChart::changeEvent(QEvent* event) {
  BareChart::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) rebuild();
}

}  // namespace tarebowl::ui
