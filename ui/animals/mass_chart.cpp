// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/animals/mass_chart.h"

#include "ui/shared/cell_painting.h"
#include "ui/shared/days.h"
#include "ui/shared/number_axis.h"
#include "ui/shared/theme.h"

#include <QChart>
#include <QDateTimeAxis>
#include <QEvent>
#include <QLegend>
#include <QLegendMarker>
#include <QLineSeries>
#include <QScatterSeries>
#include <QValueAxis>

#include <algorithm>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr int kHeight = 160;
constexpr Qt::PenStyle kStyles[] = {Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};

qreal millis(quantity::Date date) {
  return static_cast<qreal>(QDateTime(toQDate(date), QTime(12, 0)).toMSecsSinceEpoch());
}

template <class Visit>
void forEachDay(const MassChartState& state, Visit visit) {
  for (const MassLine& line : state.lines)
    for (const MassPoint& point : line.points) visit(point.on);
  for (const ConditionPoint& score : state.scores) visit(score.on);
}

}  // namespace

MassChart::MassChart(QWidget* parent) : BareChart(parent) {
  setAccessibleName(tr("Body mass and condition over time"));
  setMinimumHeight(kHeight);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void MassChart::show(const MassChartState& state) {
  state_ = state;
  setAccessibleDescription(state.spoken);
  rebuild();
}

void MassChart::rebuild() {
  chart()->removeAllSeries();
  for (QAbstractAxis* axis : chart()->axes()) {
    chart()->removeAxis(axis);
    delete axis;
  }
  const auto span = spanOf(state_);
  if (!span) return;
  const Theme& theme = currentTheme();
  addAxes(*span);
  doubtful_ = makeMarks(tr("doubtful"), QScatterSeries::MarkerShapeTriangle, theme.atLimit, theme.atLimit);
  leftOut_ = makeMarks(tr("left out"), QScatterSeries::MarkerShapeRectangle, theme.card, theme.soft);
  for (std::size_t line = 0; line < state_.lines.size(); ++line) addLine(line);
  addScores();
  for (QScatterSeries** marks : {&doubtful_, &leftOut_}) {
    if ((*marks)->count() > 0) continue;
    chart()->removeSeries(*marks);
    delete std::exchange(*marks, nullptr);  // what the chart lets go is nobody's
  }
  QLegend* legend = chart()->legend();
  legend->setVisible(true);
  legend->setAlignment(Qt::AlignTop);
  legend->setFont(smaller(font()));
  legend->setLabelColor(theme.ink);
  legend->setMarkerShape(QLegend::MarkerShapeFromSeries);
}

void MassChart::addAxes(const MassSpan& span) {
  const Theme& theme = currentTheme();
  days_ = new QDateTimeAxis;
  masses_ = new QValueAxis;
  QDateTime first = QDateTime::fromMSecsSinceEpoch(std::numeric_limits<qint64>::max());
  QDateTime last = QDateTime::fromMSecsSinceEpoch(0);
  forEachDay(state_, [&](quantity::Date day) {
    first = std::min(first, QDateTime(toQDate(day), QTime(0, 0)));
    last = std::max(last, QDateTime(toQDate(day).addDays(1), QTime(0, 0)));
  });
  days_->setRange(first.addDays(-1), last.addDays(1));
  days_->setFormat(first.daysTo(last) > 400 ? QStringLiteral("MMM yyyy") : QStringLiteral("d MMM"));
  days_->setTickCount(std::clamp(static_cast<int>(first.daysTo(last)) + 1, 2, 7));
  setRoundRange(*masses_, span.low, span.high);
  masses_->setTitleText(tr("body mass, %1").arg(state_.unit));
  chart()->addAxis(days_, Qt::AlignBottom);
  chart()->addAxis(masses_, Qt::AlignLeft);
  for (QAbstractAxis* axis : std::initializer_list<QAbstractAxis*>{days_, masses_}) {
    axis->setLabelsColor(theme.soft);
    axis->setLabelsFont(smaller(font()));
    axis->setTitleFont(smaller(font()));
    axis->setTitleBrush(theme.soft);
    axis->setGridLineColor(theme.line);
    axis->setLinePenColor(theme.line);
  }
  days_->setGridLineVisible(false);
}

QScatterSeries* MassChart::makeMarks(const QString& name, int shape, const QColor& fill, const QColor& edge) {
  auto* marks = new QScatterSeries;
  marks->setName(name);
  marks->setMarkerShape(static_cast<QScatterSeries::MarkerShape>(shape));
  marks->setMarkerSize(11.0);
  marks->setColor(fill);
  marks->setBorderColor(edge);
  chart()->addSeries(marks);
  marks->attachAxis(days_);
  marks->attachAxis(masses_);
  return marks;
}

void MassChart::addLine(std::size_t line) {
  const Theme& theme = currentTheme();
  const QColor inks[] = {theme.marker, theme.bar, theme.secondBar, theme.met, theme.over, theme.lacking};
  const QColor ink = inks[line % std::size(inks)];
  auto* series = new QLineSeries;
  series->setName(state_.lines[line].name.toHtmlEscaped());  // the legend reads markup
  series->setPen(QPen(ink, 1.8, kStyles[line % std::size(kStyles)]));
  series->setPointsVisible(true);
  for (const MassPoint& point : state_.lines[line].points) {
    if (point.trust == ReadingTrust::Counts) {
      series->append(millis(point.on), point.mass);
      continue;
    }
    const double shown = std::clamp(point.mass, masses_->min(), masses_->max());
    (point.trust == ReadingTrust::Doubtful ? doubtful_ : leftOut_)->append(millis(point.on), shown);
  }
  chart()->addSeries(series);
  series->attachAxis(days_);
  series->attachAxis(masses_);
}

void MassChart::addScores() {
  if (state_.scores.empty()) return;
  const Theme& theme = currentTheme();
  auto* axis = new QValueAxis;
  axis->setRange(state_.scaleLow, state_.scaleHigh);
  axis->setTickCount(static_cast<int>(state_.scaleHigh - state_.scaleLow) + 1);
  axis->setLabelFormat(QStringLiteral("%.0f"));
  axis->setLabelsColor(theme.soft);
  axis->setLabelsFont(smaller(font()));
  axis->setTitleFont(smaller(font()));
  axis->setTitleBrush(theme.soft);
  axis->setTitleText(tr("condition, ideal %1").arg(state_.scaleIdeal));
  axis->setGridLineVisible(false);
  axis->setLinePenColor(theme.line);
  chart()->addAxis(axis, Qt::AlignRight);
  auto* scores = new QScatterSeries;
  scores->setName(state_.scale);
  scores->setMarkerShape(QScatterSeries::MarkerShapeRectangle);
  scores->setMarkerSize(8.0);
  scores->setColor(theme.accent);
  scores->setBorderColor(theme.accent);
  for (const ConditionPoint& score : state_.scores) scores->append(millis(score.on), score.score);
  chart()->addSeries(scores);
  scores->attachAxis(days_);
  scores->attachAxis(axis);
}

void MassChart::changeEvent(QEvent* event) {
  BareChart::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) rebuild();
}

}  // namespace tarebowl::ui
