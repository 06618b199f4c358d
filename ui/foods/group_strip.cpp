// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/foods/group_strip.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/format.h"
#include "ui/shared/number_axis.h"
#include "ui/shared/theme.h"

#include <QChart>
#include <QEvent>
#include <QFontMetricsF>
#include <QGraphicsSimpleTextItem>
#include <QScatterSeries>
#include <QToolTip>
#include <QValueAxis>

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr double kOtherSide = 9.0;
constexpr double kThisSide = 13.0;

/// Dots of like amounts lie beside each other, always in the same places.
double heightOf(std::size_t place) {
  constexpr double kLanes[] = {0.50, 0.72, 0.28, 0.62, 0.38, 0.80, 0.20};
  return kLanes[place % std::size(kLanes)];
}

double greatest(const GroupStripState& state) {
  double most = state.thisFood.value_or(0.0);
  for (const auto& dot : state.others) most = std::max(most, dot.amount);
  return most > 0.0 ? most : 1.0;
}

QScatterSeries* dots(double side, const QColor& color) {
  auto* series = new QScatterSeries;
  series->setMarkerSize(side);
  series->setColor(color);
  series->setBorderColor(Qt::transparent);
  return series;
}

}  // namespace

GroupStrip::GroupStrip(QWidget* parent) : BareChart(parent) {}

void GroupStrip::show(GroupStripState state) {
  state_ = std::move(state);
  std::sort(state_.others.begin(), state_.others.end(),
            [](const auto& a, const auto& b) { return a.amount < b.amount; });
  setAccessibleName(state_.title);
  QStringList spoken;
  if (state_.thisFood) spoken << tr("%1 %2").arg(state_.thisName, measured(*state_.thisFood));
  for (const auto& dot : state_.others) spoken << tr("%1 %2").arg(dot.name, measured(dot.amount));
  setAccessibleDescription(spoken.join(QStringLiteral("; ")));
  rebuild();
}

QSize GroupStrip::sizeHint() const {
  return {300, 92};
}

void GroupStrip::rebuild() {
  chart()->removeAllSeries();
  for (QAbstractAxis* axis : chart()->axes()) {
    chart()->removeAxis(axis);
    delete axis;
  }
  const Theme& theme = currentTheme();
  auto* others = dots(kOtherSide, theme.bar);
  others->setOpacity(0.65);
  for (std::size_t i = 0; i < state_.others.size(); ++i) others->append(state_.others[i].amount, heightOf(i));
  connect(others, &QScatterSeries::hovered, this, [this](const QPointF& point, bool in) {
    for (const auto& dot : state_.others)
      if (in && dot.amount == point.x())
        QToolTip::showText(QCursor::pos(), tr("%1: %2 %3").arg(dot.name, measured(dot.amount), state_.unit));
  });
  auto* thisFood = dots(kThisSide, theme.marker);
  if (state_.thisFood) thisFood->append(*state_.thisFood, 0.5);
  auto* amounts = new QValueAxis;
  setRoundRange(*amounts, 0.0, greatest(state_) * 1.02);
  amounts->setLabelsColor(theme.soft);
  amounts->setLabelsFont(smaller(font()));
  amounts->setLinePenColor(theme.line);
  amounts->setGridLineVisible(false);
  auto* lanes = new QValueAxis;
  lanes->setRange(0.0, 1.0);
  lanes->setVisible(false);
  chart()->addAxis(amounts, Qt::AlignBottom);
  chart()->addAxis(lanes, Qt::AlignLeft);
  for (QScatterSeries* series : {others, thisFood}) {
    chart()->addSeries(series);
    series->attachAxis(amounts);
    series->attachAxis(lanes);
  }
  placeNames();
}

void GroupStrip::placeNames() {
  for (QGraphicsItem* item : names_) delete item;
  names_.clear();
  if (chart()->series().isEmpty()) return;
  if (state_.thisFood) put(tr("this food"), *state_.thisFood, true);
  if (state_.others.empty()) return;
  const auto& last = state_.others.back();
  // The farthest dot is named where it stands apart.
  const bool apart = !state_.thisFood || std::abs(last.amount - *state_.thisFood) > greatest(state_) * 0.3;
  if (apart) put(last.name, last.amount, false);
}

void GroupStrip::put(const QString& text, double amount, bool bold) {
  const QRectF area = chart()->plotArea();
  auto* item = new QGraphicsSimpleTextItem(text, chart());
  QFont face = smaller(font());
  face.setBold(bold);
  item->setFont(face);
  item->setBrush(bold ? currentTheme().ink : currentTheme().soft);
  const double width = QFontMetricsF(face).horizontalAdvance(text);
  const double x = chart()->mapToPosition(QPointF(amount, 0.5)).x();
  item->setPos(std::clamp(x - width / 2.0, area.left(), std::max(area.left(), area.right() - width)),
               area.top() - 2.0);
  names_.push_back(item);
}

void GroupStrip::resizeEvent(QResizeEvent* event) {
  QChartView::resizeEvent(event);
  placeNames();
}

void GroupStrip::changeEvent(QEvent* event) {
  QChartView::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) rebuild();
}

}  // namespace tarebowl::ui
