// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/health/health_timeline.h"

#include "ui/health/health_text.h"
#include "ui/shared/cell_painting.h"
#include "ui/shared/days.h"
#include "ui/shared/number_axis.h"
#include "ui/shared/theme.h"

#include <QChart>
#include <QDateTimeAxis>
#include <QEvent>
#include <QKeyEvent>
#include <QLegend>
#include <QLegendMarker>
#include <QLineSeries>
#include <QScatterSeries>
#include <QToolTip>
#include <QValueAxis>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <map>

namespace tarebowl::ui {
namespace {

constexpr int kHeight = 250;
constexpr double kLeastRatioTop = 2.0;
constexpr double kMostRatioTop = 6.0;
constexpr double kClosestDays = 4.0;

qreal millis(quantity::Date date) {
  return static_cast<qreal>(QDateTime(toQDate(date), QTime(12, 0)).toMSecsSinceEpoch());
}

}  // namespace

HealthTimeline::HealthTimeline(QWidget* parent) : BareChart(parent) {
  setAccessibleName(tr("Signs, blood, treatments, condition, body mass, Ca:P and diets over time"));
  setToolTip(tr("Drag over a stretch, or use the wheel or + and -, to look closer; 0 shows all"));
  setMinimumHeight(kHeight);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setFocusPolicy(Qt::StrongFocus);
  setRubberBand(QChartView::HorizontalRubberBand);
}

void HealthTimeline::show(const HealthView& view) {
  view_ = view;
  rebuild();
}

void HealthTimeline::rebuild() {
  chart()->removeAllSeries();
  for (QAbstractAxis* axis : chart()->axes()) {
    chart()->removeAxis(axis);
    delete axis;
  }
  days_ = nullptr;
  if (!view_) return;
  addAxes();
  addRatio();
  addMasses();
  addConditions();
  addSigns();
  addBlood();
  addTreatments();
  addDiets();
  QLegend* legend = chart()->legend();
  legend->setVisible(true);
  legend->setAlignment(Qt::AlignTop);
  legend->setFont(smaller(font()));
  legend->setLabelColor(currentTheme().ink);
  legend->setMarkerShape(QLegend::MarkerShapeFromSeries);
}

void HealthTimeline::addAxes() {
  const Theme& theme = currentTheme();
  days_ = new QDateTimeAxis;
  ratio_ = new QValueAxis;
  mass_ = new QValueAxis;
  days_->setFormat(QStringLiteral("d MMM"));
  days_->setTickCount(8);
  double top = kLeastRatioTop;
  for (const health::RatioDay& day : view_->page.review.ratio)
    top = std::max({top, day.eaten.value_or(0.0), day.offered.value_or(0.0)});
  setRoundRange(*ratio_, 0.0, std::min(top * 1.1, kMostRatioTop));
  ratio_->setTitleText(tr("Ca:P"));
  double heaviest = 0.0;
  for (const transfer::MassSeen& mass : view_->period.masses) heaviest = std::max(heaviest, mass.kilograms);
  setRoundRange(*mass_, 0.0, heaviest > 0.0 ? heaviest * 1.15 : 1.0);
  mass_->setTitleText(tr("body mass, kg"));
  mass_->setGridLineVisible(false);
  mass_->setVisible(heaviest > 0.0);
  chart()->addAxis(days_, Qt::AlignBottom);
  chart()->addAxis(ratio_, Qt::AlignLeft);
  chart()->addAxis(mass_, Qt::AlignRight);
  condition_ = new QValueAxis;
  condition_->setRange(0.0, 1.0);
  condition_->setVisible(false);
  chart()->addAxis(condition_, Qt::AlignRight);
  for (QAbstractAxis* axis : std::initializer_list<QAbstractAxis*>{days_, ratio_, mass_}) {
    axis->setLabelsColor(theme.soft);
    axis->setLabelsFont(smaller(font()));
    axis->setTitleFont(smaller(font()));
    axis->setTitleBrush(theme.soft);
    axis->setGridLineColor(theme.line);
    axis->setLinePenColor(theme.line);
  }
  showAll();
}

void HealthTimeline::place(QXYSeries& series, QValueAxis& axis) {
  chart()->addSeries(&series);
  series.attachAxis(days_);
  series.attachAxis(&axis);
}

void HealthTimeline::hideFromLegend(QXYSeries& series) {
  for (QLegendMarker* marker : chart()->legend()->markers(&series)) marker->setVisible(false);
}

/// A gap stays a gap: each run of known days is a line of its own, and the first bears the name.
void HealthTimeline::addRatio() {
  const Theme& theme = currentTheme();
  const auto addRuns = [&](const QString& name, const QPen& pen, auto valueOf) {
    QLineSeries* run = nullptr;
    bool named = false;
    std::optional<quantity::Date> before;
    for (const health::RatioDay& day : view_->page.review.ratio) {
      const std::optional<double> value = valueOf(day);
      const bool next =
          before && std::chrono::sys_days(day.day) - std::chrono::sys_days(*before) == std::chrono::days(1);
      if (!value || !next) run = nullptr;
      before = day.day;
      if (!value) continue;
      if (run == nullptr) {
        run = new QLineSeries;
        run->setName(name);
        run->setPen(pen);
        place(*run, *ratio_);
        if (named) hideFromLegend(*run);
        named = true;
      }
      run->append(millis(day.day), *value);
    }
  };
  addRuns(tr("Ca:P offered"), QPen(theme.soft, 1.4, Qt::DashLine),
          [](const health::RatioDay& day) { return day.offered; });
  addRuns(tr("Ca:P eaten"), QPen(theme.bar, 1.2), [](const health::RatioDay& day) { return day.eaten; });
  addRuns(tr("mean of 7 days"), QPen(theme.marker, 2.6),
          [](const health::RatioDay& day) { return day.rolling; });
}

void HealthTimeline::addMasses() {
  const Theme& theme = currentTheme();
  std::map<std::string, QLineSeries*> lines;
  for (const transfer::MassSeen& mass : view_->period.masses) {
    QLineSeries*& line = lines[mass.who];
    if (line == nullptr) {
      line = new QLineSeries;
      line->setName(tr("body mass"));
      line->setPen(QPen(theme.met, 1.4, lines.size() % 2 == 1 ? Qt::DotLine : Qt::DashDotLine));
      line->setPointsVisible(true);
      place(*line, *mass_);
      if (lines.size() > 1) hideFromLegend(*line);
    }
    line->append(millis(mass.day), mass.kilograms);
  }
}

void HealthTimeline::placeLane(QScatterSeries& lane, double height,
                               const std::vector<std::pair<quantity::Date, QString>>& points) {
  lane.setMarkerSize(12.0);
  lane.setBorderColor(lane.color());
  for (const auto& [day, text] : points) lane.append(millis(day), ratio_->max() * height);
  place(lane, *ratio_);
  connect(&lane, &QXYSeries::hovered, this, [this, points](const QPointF& at, bool isOver) {
    QStringList here;
    for (const auto& [day, text] : points)
      if (millis(day) == at.x()) here << text;
    QToolTip::showText(QCursor::pos(), isOver ? here.join(QLatin1Char('\n')) : QString(), this);
  });
}

/// In a lane at the foot of the chart, whatever their kind.
void HealthTimeline::addSigns() {
  constexpr double kFoot = 0.06;
  std::vector<std::pair<quantity::Date, QString>> points;
  for (const store::StoredObservation& seen : view_->period.observations)
    if (health::isSign(seen.record)) points.emplace_back(seen.record.on, timelineText(seen.record));
  if (points.empty()) return;
  auto* signs = new QScatterSeries;
  signs->setName(tr("signs"));
  signs->setMarkerShape(QScatterSeries::MarkerShapeTriangle);
  signs->setColor(currentTheme().lacking);
  placeLane(*signs, kFoot, points);
}

/// In a lane at the head, by how each value stands to its lab's range.
void HealthTimeline::addBlood() {
  constexpr double kHead = 0.95;
  const Theme& theme = currentTheme();
  struct Lane {
    QString name;
    QScatterSeries::MarkerShape shape;
    QColor color;
    std::vector<std::pair<quantity::Date, QString>> points{};
  };
  Lane within{tr("blood, in the lab's range"), QScatterSeries::MarkerShapeCircle, theme.met};
  Lane outside{tr("blood, outside it"), QScatterSeries::MarkerShapeRotatedRectangle, theme.lacking};
  Lane noRange{tr("blood, no range"), QScatterSeries::MarkerShapeRectangle, theme.unknown};
  for (const store::StoredObservation& seen : view_->period.observations)
    for (const health::BloodValue& value : seen.record.blood) {
      const health::BloodStanding standing = health::standingOf(value);
      Lane& lane = standing == health::BloodStanding::NoRange  ? noRange
                   : standing == health::BloodStanding::Within ? within
                                                               : outside;
      lane.points.emplace_back(seen.record.on, timelineText(seen.record));
    }
  for (const Lane& lane : {within, noRange, outside}) {
    if (lane.points.empty()) continue;
    auto* series = new QScatterSeries;
    series->setName(lane.name);
    series->setMarkerShape(lane.shape);
    series->setColor(lane.color);
    placeLane(*series, kHead, lane.points);
  }
}

void HealthTimeline::addTreatments() {
  constexpr double kBelowBlood = 0.87;
  std::vector<std::pair<quantity::Date, QString>> points;
  for (const store::StoredObservation& seen : view_->period.observations)
    if (seen.record.kind == health::SignKind::Treatment)
      points.emplace_back(seen.record.on, timelineText(seen.record));
  if (points.empty()) return;
  auto* treatments = new QScatterSeries;
  treatments->setName(tr("treatments"));
  treatments->setMarkerShape(QScatterSeries::MarkerShapeStar);
  treatments->setColor(currentTheme().accent);
  placeLane(*treatments, kBelowBlood, points);
}

/// Each animal's scores from the lowest to the highest of its scale.
void HealthTimeline::addConditions() {
  std::map<std::string, QLineSeries*> lines;
  std::vector<std::pair<quantity::Date, QString>> points;
  for (const transfer::ConditionSeen& seen : view_->period.conditions)
    points.emplace_back(seen.day, tr("%1: condition %2 of %3 … %4 (%5)")
                                      .arg(QString::fromStdString(seen.who))
                                      .arg(seen.score)
                                      .arg(seen.lowest)
                                      .arg(seen.highest)
                                      .arg(QString::fromStdString(seen.scale)));
  for (const transfer::ConditionSeen& seen : view_->period.conditions) {
    QLineSeries*& line = lines[seen.who];
    if (line == nullptr) {
      line = new QLineSeries;
      line->setName(tr("condition score, within its scale"));
      line->setPen(QPen(currentTheme().over, 1.2, Qt::DotLine));
      line->setPointsVisible(true);
      place(*line, *condition_);
      if (lines.size() > 1) hideFromLegend(*line);
      connect(line, &QXYSeries::hovered, this, [this, points](const QPointF& at, bool isOver) {
        constexpr qreal kHalfADay = 43'200'000.0;
        QStringList here;
        for (const auto& [day, text] : points)
          if (std::abs(millis(day) - at.x()) < kHalfADay) here << text;
        QToolTip::showText(QCursor::pos(), isOver ? here.join(QLatin1Char('\n')) : QString(), this);
      });
    }
    line->append(millis(seen.day), (seen.score - seen.lowest) / (seen.highest - seen.lowest));
  }
}

void HealthTimeline::addDiets() {
  bool named = false;
  for (const transfer::DietBegun& diet : view_->period.diets) {
    if (diet.diet.empty()) continue;
    auto* line = new QLineSeries;
    line->setName(tr("a diet begins"));
    line->setPen(QPen(currentTheme().accent, 1.4, Qt::DashDotDotLine));
    line->append(millis(diet.day), 0.0);
    line->append(millis(diet.day), ratio_->max());
    place(*line, *ratio_);
    if (named) hideFromLegend(*line);
    named = true;
  }
}

void HealthTimeline::showAll() {
  if (days_ == nullptr || !view_) return;
  days_->setRange(QDateTime(toQDate(view_->period.from), QTime(0, 0)),
                  QDateTime(toQDate(view_->period.to).addDays(1), QTime(0, 0)));
}

double HealthTimeline::daysInSight() const {
  if (days_ == nullptr) return 0.0;
  constexpr double kMillisADay = 86'400'000.0;
  return static_cast<double>(days_->min().msecsTo(days_->max())) / kMillisADay;
}

void HealthTimeline::zoom(double factor) {
  if (days_ == nullptr || !view_) return;
  const double all = static_cast<double>(toQDate(view_->period.from).daysTo(toQDate(view_->period.to)) + 1);
  const double days = daysInSight() / factor;
  if (days >= all) return showAll();
  const double kept = std::max(days, std::min(kClosestDays, all));
  const qint64 middle = (days_->min().toMSecsSinceEpoch() + days_->max().toMSecsSinceEpoch()) / 2;
  const auto half = static_cast<qint64>(kept * 43'200'000.0);
  days_->setRange(QDateTime::fromMSecsSinceEpoch(middle - half),
                  QDateTime::fromMSecsSinceEpoch(middle + half));
}

void HealthTimeline::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Plus:
      return zoom(2.0);
    case Qt::Key_Minus:
      return zoom(0.5);
    case Qt::Key_0:
      return showAll();
    default:
      BareChart::keyPressEvent(event);
  }
}

void HealthTimeline::wheelEvent(QWheelEvent* event) {
  zoom(event->angleDelta().y() > 0 ? 1.25 : 0.8);
  event->accept();
}

void HealthTimeline::changeEvent(QEvent* event) {
  BareChart::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) rebuild();
}

}  // namespace tarebowl::ui
