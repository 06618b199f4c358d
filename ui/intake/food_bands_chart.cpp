// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/food_bands_chart.h"

#include "ui/intake/intake_text.h"
#include "ui/shared/band_colors.h"

#include <QAreaSeries>
#include <QLineSeries>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

FoodBandsChart::FoodBandsChart(QWidget* parent)
    : TimeChart(tr("Grams of each food over time, offered and eaten"), parent) {}

void FoodBandsChart::show(FoodBands bands) {
  bands_ = std::move(bands);
  rebuild();
}

void FoodBandsChart::setShows(Shows shows) {
  shows_ = shows;
  rebuild();
}

double FoodBandsChart::highest() const {
  double most = 0.0;
  for (std::size_t i = 0; i < bands_.points.size(); ++i) {
    double sum = 0.0;
    for (const FoodBand& band : bands_.bands)
      sum += shows_ == Shows::Eaten ? band.eaten[i] : std::max(band.offered[i], band.eaten[i]);
    most = std::max(most, sum);
  }
  return most;
}

/// Steps: a point holds for all of its days.
void FoodBandsChart::addBand(const QBrush& brush, const std::vector<double>& low,
                             const std::vector<double>& high) {
  auto* lower = new QLineSeries;
  auto* upper = new QLineSeries;
  for (std::size_t i = 0; i < bands_.points.size(); ++i) {
    const DaySpan& span = bands_.points[i].span;
    for (const double x : {millisAt(span.from), millisAt(span.until.addDays(1))}) {
      lower->append(x, low[i]);
      upper->append(x, high[i]);
    }
  }
  auto* area = new QAreaSeries(upper, lower);
  lower->setParent(area);
  upper->setParent(area);
  area->setBrush(brush);
  area->setPen(Qt::NoPen);
  place(*area);
}

void FoodBandsChart::rebuild() {
  beginAnew(0.0, highest() * 1.04, QStringLiteral("%.0f g"));
  const Theme& theme = currentTheme();
  std::vector<LegendEntry> legend;
  std::vector<double> low(bands_.points.size());
  for (std::size_t b = 0; b < bands_.bands.size(); ++b) {
    const FoodBand& band = bands_.bands[b];
    const QColor color = bandColor(theme, static_cast<int>(b));
    std::vector<double> high(low);
    for (std::size_t i = 0; i < high.size(); ++i)
      high[i] += shows_ == Shows::Offered ? band.offered[i] : band.eaten[i];
    addBand(color, low, high);
    legend.push_back({band.name, QPen(color), true});
    if (shows_ == Shows::Both) {
      std::vector<double> left(high);
      for (std::size_t i = 0; i < left.size(); ++i) left[i] += std::max(0.0, band.offered[i] - band.eaten[i]);
      addBand(QBrush(color, Qt::FDiagPattern), high, left);
      high = std::move(left);
    }
    low = std::move(high);
  }
  setLegend(std::move(legend));
}

QString FoodBandsChart::told(QDate day) const {
  for (std::size_t i = 0; i < bands_.points.size(); ++i) {
    const ChartDays& point = bands_.points[i];
    if (day < point.span.from || day > point.span.until) continue;
    QStringList lines{daysText(point)};
    for (auto band = bands_.bands.rbegin(); band != bands_.bands.rend() && !point.isMissing(); ++band)
      if (band->offered[i] > 0.0)
        lines << tr("%1: %2 of %3 g").arg(band->name, gramsADay(band->eaten[i]), gramsADay(band->offered[i]));
    return lines.join(QLatin1Char('\n'));
  }
  return {};
}

void FoodBandsChart::drawBackground(QPainter* painter, const QRectF& rect) {
  TimeChart::drawBackground(painter, rect);
  paintMissing(*painter, bands_.points);
}

}  // namespace tarebowl::ui
