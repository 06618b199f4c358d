// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/value_chart.h"

#include "ui/intake/intake_text.h"
#include "ui/shared/days.h"
#include "ui/shared/format.h"
#include "ui/shared/state_mark.h"

#include <QChart>
#include <QLineSeries>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr double kMarkSide = 11.0;

QPointF middleOf(const ChartDays& point, double value) {
  return {(millisAt(point.span.from) + millisAt(point.span.until.addDays(1))) / 2.0, value};
}

QString axisFormat(double highest) {
  return highest >= 20.0  ? QStringLiteral("%.0f")
         : highest >= 2.0 ? QStringLiteral("%.1f")
                          : QStringLiteral("%.2f");
}

}  // namespace

ValueChart::ValueChart(const QString& accessibleName, QWidget* parent) : TimeChart(accessibleName, parent) {}

void ValueChart::show(ValueLine line) {
  line_ = std::move(line);
  rebuild();
}

double ValueChart::highest() const {
  double most = std::max(line_.min.value_or(0.0) * 1.2, 0.0);
  for (const auto& values : {line_.offered, line_.eaten})
    for (const auto& value : values) most = std::max(most, value.value_or(0.0));
  // A maximum far above all that was fed would make the rest too small to read.
  if (line_.max && *line_.max < 2.0 * most) most = std::max(most, *line_.max);
  return most > 0.0 ? most * 1.1 : 1.0;
}

/// Each run of points without a gap is a line of its own.
void ValueChart::addRuns(const QPen& pen, const std::vector<std::optional<double>>& values) {
  QLineSeries* run = nullptr;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!values[i]) {
      run = nullptr;
      continue;
    }
    if (run == nullptr) {
      run = new QLineSeries;
      run->setPen(pen);
      place(*run);
    }
    run->append(middleOf(line_.points[i], *values[i]));
    // A single day between gaps is seen too.
    run->setPointsVisible(run->count() == 1);
  }
}

void ValueChart::rebuild() {
  const double most = highest();
  beginAnew(0.0, most, axisFormat(most));
  const Theme& theme = currentTheme();
  const QPen offered(theme.soft, 1.4, Qt::DashLine);
  const QPen eaten(theme.marker, 2.2);
  addRuns(offered, line_.offered);
  addRuns(eaten, line_.eaten);
  setLegend({{tr("offered"), offered, false}, {tr("eaten ± its uncertainty"), eaten, false}});
}

void ValueChart::drawBackground(QPainter* painter, const QRectF& rect) {
  TimeChart::drawBackground(painter, rect);
  painter->save();
  painter->setClipRect(chart()->plotArea().adjusted(0, 0, 1, 1));
  paintZone(*painter);
  paintMissing(*painter, line_.points);
  paintDoubt(*painter);
  paintDrops(*painter);
  painter->restore();
}

void ValueChart::paintZone(QPainter& painter) const {
  if (!line_.min && !line_.max) return;
  const QRectF plot = chart()->plotArea();
  const double high = yOf(std::min(line_.max.value_or(top()), top()));
  const double low = yOf(std::clamp(line_.min.value_or(0.0), bottom(), top()));
  painter.fillRect(QRectF(plot.left(), high, plot.width(), low - high), currentTheme().zone);
  painter.setPen(QPen(currentTheme().met, 1.0));
  if (line_.min) painter.drawLine(QPointF(plot.left(), low), QPointF(plot.right(), low));
  if (line_.max && *line_.max <= top())
    painter.drawLine(QPointF(plot.left(), high), QPointF(plot.right(), high));
}

void ValueChart::paintDoubt(QPainter& painter) const {
  QColor ink = currentTheme().bar;
  ink.setAlphaF(0.3F);
  for (std::size_t i = 0; i < line_.eaten.size(); ++i) {
    if (!line_.eaten[i] || !(line_.sd[i] > 0.0)) continue;
    const DaySpan& span = line_.points[i].span;
    const double left = xOf(span.from);
    const double high = yOf(*line_.eaten[i] + line_.sd[i]);
    painter.fillRect(
        QRectF(left, high, xOf(span.until.addDays(1)) - left, yOf(*line_.eaten[i] - line_.sd[i]) - high),
        ink);
  }
}

void ValueChart::paintDrops(QPainter& painter) const {
  const QRectF plot = chart()->plotArea();
  for (const intake::Drop& drop : line_.drops) {
    const double left = xOf(toQDate(drop.from));
    const double right = xOf(toQDate(drop.until).addDays(1));
    if (right < plot.left() || left > plot.right()) continue;
    const double middle = std::clamp((left + right) / 2.0, plot.left() + kMarkSide, plot.right() - kMarkSide);
    paintMark(painter,
              QRectF(middle - kMarkSide / 2.0, plot.bottom() - kMarkSide - 3.0, kMarkSide, kMarkSide),
              Mark::Lacking, currentTheme());
    painter.setPen(QPen(currentTheme().lacking, 2.0));
    painter.drawLine(QPointF(left, plot.bottom() - 1.0), QPointF(right, plot.bottom() - 1.0));
  }
}

QString ValueChart::told(QDate day) const {
  for (std::size_t i = 0; i < line_.points.size(); ++i) {
    const ChartDays& point = line_.points[i];
    if (day < point.span.from || day > point.span.until) continue;
    QStringList lines{daysText(point)};
    if (line_.eaten[i])
      lines << tr("eaten %1 ± %2 %3").arg(measured(*line_.eaten[i]), measured(line_.sd[i]), line_.unit);
    if (line_.offered[i]) lines << tr("offered %1 %2").arg(measured(*line_.offered[i]), line_.unit);
    for (const intake::Drop& drop : line_.drops)
      if (toQDate(drop.from) <= point.span.until && toQDate(drop.until) >= point.span.from)
        lines << dropText(drop);
    return lines.join(QLatin1Char('\n'));
  }
  return {};
}

}  // namespace tarebowl::ui
