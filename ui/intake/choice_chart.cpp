// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/choice_chart.h"

#include "ui/intake/intake_text.h"
#include "ui/shared/band_colors.h"
#include "ui/shared/format.h"

#include <QChart>
#include <QLineSeries>
#include <QPainter>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {

ChoiceChart::ChoiceChart(QWidget* parent) : TimeChart(tr("What is picked first, over time"), parent) {}

void ChoiceChart::show(ChoiceLines lines) {
  lines_ = std::move(lines);
  rebuild();
}

double ChoiceChart::xOfFood(std::size_t food, const DaySpan& period) const {
  const double share = (static_cast<double>(food) + 1.0) / (static_cast<double>(lines_.foods.size()) + 1.0);
  const double begin = millisAt(period.from);
  return begin + share * (millisAt(period.until.addDays(1)) - begin);
}

void ChoiceChart::rebuild() {
  double most = lines_.neutral;
  for (const ChoiceLine& food : lines_.foods)
    for (const auto& interval : food.interval) most = std::max(most, interval ? interval->high : 0.0);
  beginAnew(0.0, std::min(1.0, most > 0.0 ? most * 1.1 : 1.0), QStringLiteral("%.2f"));
  const Theme& theme = currentTheme();
  std::vector<LegendEntry> legend;
  for (std::size_t f = 0; f < lines_.foods.size(); ++f) {
    const ChoiceLine& food = lines_.foods[f];
    const QPen pen(bandColor(theme, static_cast<int>(f)), 2.0, bandStyle(static_cast<int>(f)));
    legend.push_back({food.name, pen, false});
    QLineSeries* run = nullptr;
    for (std::size_t i = 0; i < food.alpha.size(); ++i) {
      if (!food.alpha[i]) {
        run = nullptr;
        continue;
      }
      if (run == nullptr) {
        run = new QLineSeries;
        run->setPen(pen);
        run->setPointsVisible(true);
        place(*run);
      }
      run->append(xOfFood(f, lines_.periods[i]), *food.alpha[i]);
    }
  }
  setLegend(std::move(legend));
}

void ChoiceChart::drawBackground(QPainter* painter, const QRectF& rect) {
  TimeChart::drawBackground(painter, rect);
  if (lines_.periods.empty() || !span().from.isValid()) return;
  const Theme& theme = currentTheme();
  const QRectF plot = chart()->plotArea();
  painter->save();
  painter->setClipRect(plot);
  if (lines_.neutral > 0.0) {
    painter->setPen(QPen(theme.soft, 1.2, Qt::DashLine));
    painter->drawLine(QPointF(plot.left(), yOf(lines_.neutral)), QPointF(plot.right(), yOf(lines_.neutral)));
  }
  const double begin = millisAt(span().from);
  const double width = millisAt(span().until.addDays(1)) - begin;
  for (std::size_t f = 0; f < lines_.foods.size(); ++f) {
    painter->setPen(QPen(bandColor(theme, static_cast<int>(f)), 1.4));
    for (std::size_t i = 0; i < lines_.periods.size(); ++i) {
      const auto& interval = lines_.foods[f].interval[i];
      if (!interval) continue;
      const double x = plot.left() + plot.width() * (xOfFood(f, lines_.periods[i]) - begin) / width;
      painter->drawLine(QPointF(x, yOf(interval->low)), QPointF(x, yOf(interval->high)));
    }
  }
  painter->restore();
}

QString ChoiceChart::told(QDate day) const {
  for (std::size_t i = 0; i < lines_.periods.size(); ++i) {
    if (day < lines_.periods[i].from || day > lines_.periods[i].until) continue;
    QStringList lines{tr("%1, from %2").arg(spanText(lines_.periods[i]), bowlsText(lines_.bowls[i]))};
    for (const ChoiceLine& food : lines_.foods)
      if (food.alpha[i]) lines << tr("%1: %2").arg(food.name, alphaText(food.alpha[i], food.interval[i]));
    return lines.join(QLatin1Char('\n'));
  }
  return {};
}

}  // namespace tarebowl::ui
