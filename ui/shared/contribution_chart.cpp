// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/contribution_chart.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/theme.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QEvent>
#include <QFontMetricsF>
#include <QGraphicsSimpleTextItem>
#include <QHorizontalBarSeries>
#include <QLegend>
#include <QValueAxis>

#include <algorithm>

namespace tarebowl::ui {
namespace {

constexpr int kRowHeight = 24;
constexpr int kLegendHeight = 26;
/// Of the width beside the names: bars take this much, the words after them the rest.
constexpr double kBarPart = 0.34;

/// Of the whole width: the names of the foods.
constexpr double kNamePart = 0.33;

double greatest(const ContributionChartState& state) {
  double most = 0.0;
  for (const ContributionRow& row : state.rows)
    for (const auto& amount : row.amounts) most = std::max(most, amount.value_or(0.0));
  return most > 0.0 ? most : 1.0;
}

QString spoken(const ContributionChartState& state) {
  QStringList lines;
  for (const ContributionRow& row : state.rows) {
    QString line = row.food + QStringLiteral(": ") + row.label;
    if (!row.source.isEmpty()) line += QStringLiteral(" (") + row.source + QLatin1Char(')');
    lines << line;
  }
  return lines.join(QStringLiteral("; "));
}

}  // namespace

ContributionChart::ContributionChart(QWidget* parent) : BareChart(parent) {}

void ContributionChart::show(const ContributionChartState& state) {
  state_ = state;
  setAccessibleName(state.title);
  setAccessibleDescription(spoken(state));
  rebuild();
  updateGeometry();
}

QSize ContributionChart::sizeHint() const {
  const int legend = state_.series.size() > 1 ? kLegendHeight : 0;
  return {300, static_cast<int>(state_.rows.size()) * kRowHeight + legend};
}

void ContributionChart::rebuild() {
  chart()->removeAllSeries();
  for (QAbstractAxis* axis : chart()->axes()) {
    chart()->removeAxis(axis);
    delete axis;
  }
  const Theme& theme = currentTheme();
  auto* bars = new QHorizontalBarSeries;
  bars->setBarWidth(state_.series.size() > 1 ? 0.72 : 0.5);
  // The chart counts its rows from below.
  for (int s = static_cast<int>(state_.series.size()) - 1; s >= 0; --s) {
    auto* set = new QBarSet(state_.series[s]);
    set->setColor(s == 0 ? theme.bar : theme.secondBar);
    set->setBorderColor(Qt::transparent);
    for (auto row = state_.rows.rbegin(); row != state_.rows.rend(); ++row)
      set->append(row->amounts.at(static_cast<std::size_t>(s)).value_or(0.0));
    bars->append(set);
  }
  chart()->addSeries(bars);
  auto* rows = new QBarCategoryAxis;
  // Names may repeat and categories may not: the chart counts, placeRow() writes the names.
  while (rows->count() < static_cast<int>(state_.rows.size())) rows->append(QString::number(rows->count()));
  auto* amounts = new QValueAxis;
  amounts->setRange(0.0, greatest(state_));
  chart()->addAxis(rows, Qt::AlignLeft);
  chart()->addAxis(amounts, Qt::AlignBottom);
  bars->attachAxis(rows);
  bars->attachAxis(amounts);
  rows->setVisible(false);
  amounts->setVisible(false);
  placeLabels();
}

QRectF ContributionChart::plotArea() const {
  const double names = kNamePart * width();
  return {names, state_.series.size() > 1 ? kLegendHeight : 0.0, kBarPart * (width() - names),
          static_cast<double>(state_.rows.size()) * kRowHeight};
}

double ContributionChart::put(const QString& text, const QFont& face, const QColor& color, double x,
                              double top, double room) {
  const QFontMetricsF measure(face);
  auto* item = new QGraphicsSimpleTextItem(measure.elidedText(text, Qt::ElideRight, room), chart());
  item->setFont(face);
  item->setBrush(color);
  item->setPos(x, top + (kRowHeight - measure.height()) / 2);
  item->setToolTip(text);
  labels_.push_back(item);
  return x + measure.horizontalAdvance(item->text());
}

void ContributionChart::placeLabels() {
  for (QGraphicsItem* label : labels_) delete label;
  labels_.clear();
  chart()->setPlotArea(plotArea());
  if (state_.series.size() > 1) placeLegend();
  double top = plotArea().top();
  for (const ContributionRow& row : state_.rows) {
    placeRow(row, top);
    top += kRowHeight;
  }
}

void ContributionChart::placeLegend() {
  constexpr double kSide = 10.0;
  const Theme& theme = currentTheme();
  double x = plotArea().left();
  for (int s = 0; s < state_.series.size(); ++s) {
    auto* swatch = new QGraphicsRectItem(x, (kRowHeight - kSide) / 2, kSide, kSide, chart());
    swatch->setBrush(s == 0 ? theme.bar : theme.secondBar);
    swatch->setPen(Qt::NoPen);
    labels_.push_back(swatch);
    x = put(state_.series[s], smaller(font()), theme.ink, x + kSide + 5, 0.0, width() - x) + 16;
  }
}

void ContributionChart::placeRow(const ContributionRow& row, double top) {
  const Theme& theme = currentTheme();
  const QRectF plot = plotArea();
  const QFont small = smaller(font());
  double amount = 0.0;
  bool known = false;
  for (const auto& value : row.amounts) {
    amount = std::max(amount, value.value_or(0.0));
    known = known || value.has_value();
  }
  put(row.food, font(), theme.ink, 0.0, top, plot.left() - 10);
  const double start = plot.left() + plot.width() * amount / greatest(state_) + (amount > 0.0 ? 8 : 2);
  const double end = put(row.label, small, known ? theme.ink : theme.unknown, start, top, width() - start);
  constexpr double kLeastForASource = 40.0;
  if (!row.source.isEmpty() && width() - end > kLeastForASource)
    put(QStringLiteral("· ") + row.source, small, theme.soft, end + 5, top, width() - end - 5);
}

void ContributionChart::resizeEvent(QResizeEvent* event) {
  QChartView::resizeEvent(event);
  placeLabels();
}

void ContributionChart::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) rebuild();
}

}  // namespace tarebowl::ui
