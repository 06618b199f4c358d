// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diets/trace_chart.h"

#include "ui/shared/format.h"
#include "ui/shared/theme.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace tarebowl::ui {
namespace {

constexpr double kLeft = 46.0;
constexpr double kRight = 132.0;  // for the names of the lines
constexpr double kTop = 8.0;
constexpr double kBottom = 34.0;
constexpr double kGap = 14.0;
constexpr double kUpperPart = 0.66;
constexpr int kTicks = 5;

/// Lines differ in colour and in their dashes, so that they read in greyscale.
QPen penOf(int style) {
  const Theme& theme = currentTheme();
  const std::array<QColor, 5> colours{theme.marker, theme.bar, theme.met, theme.over, theme.atLimit};
  const std::array<Qt::PenStyle, 4> dashes{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
  const auto place = static_cast<std::size_t>(style);
  QPen pen(colours[place % colours.size()], 2.0);
  pen.setStyle(dashes[(place / 2) % dashes.size()]);
  return pen;
}

/// 1, 2 or 5 times a power of ten.
double niceStep(double span) {
  if (!(span > 0.0)) return 1.0;
  const double rough = span / kTicks;
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (rough <= factor * power) return factor * power;
  return 10.0 * power;
}

double greatest(const std::vector<double>& values) {
  return values.empty() ? 0.0 : *std::ranges::max_element(values);
}

double yOf(double value, const QRectF& area, double most) {
  return area.bottom() - (most > 0.0 ? value / most : 0.0) * area.height();
}

}  // namespace

TraceChart::TraceChart(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
}

QSize TraceChart::sizeHint() const {
  return {520, 260};
}
QSize TraceChart::minimumSizeHint() const {
  return {320, 110};
}

void TraceChart::show(TraceChartState state) {
  state_ = std::move(state);
  if (reading_ && !state_.at.empty()) reading_ = std::clamp(*reading_, state_.at.front(), state_.at.back());
  update();
}

void TraceChart::setReading(std::optional<double> at) {
  if (at && !state_.at.empty()) at = std::clamp(*at, state_.at.front(), state_.at.back());
  reading_ = at;
  update();
  if (at) emit readAt(*at);
}

QRectF TraceChart::gramsArea() const {
  const double height = std::max(20.0, this->height() - kTop - kBottom - kGap);
  return {kLeft, kTop, std::max(20.0, width() - kLeft - kRight), kUpperPart * height};
}

QRectF TraceChart::lowerArea() const {
  const QRectF upper = gramsArea();
  const double height = std::max(20.0, this->height() - kTop - kBottom - kGap);
  return {upper.left(), upper.bottom() + kGap, upper.width(), (1.0 - kUpperPart) * height};
}

double TraceChart::xOf(double at) const {
  const double span = state_.high - state_.low;
  return gramsArea().left() + (span > 0.0 ? (at - state_.low) / span : 0.5) * gramsArea().width();
}

double TraceChart::atOf(double x) const {
  return state_.low + (x - gramsArea().left()) / gramsArea().width() * (state_.high - state_.low);
}

void TraceChart::paintEvent(QPaintEvent* /*event*/) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), currentTheme().card);
  if (state_.at.empty()) return;
  drawAxis(painter);
  drawLines(painter);
  drawLower(painter);
  const double bottom = lowerArea().bottom();
  if (state_.now && *state_.now >= state_.low && *state_.now <= state_.high) {
    painter.setPen(QPen(currentTheme().soft, 1.0, Qt::DashLine));
    const double x = xOf(*state_.now);
    painter.drawLine(QPointF(x, kTop), QPointF(x, bottom));
    painter.drawText(QPointF(x + 3, kTop + painter.fontMetrics().ascent()), tr("now"));
  }
  if (reading_) {
    painter.setPen(QPen(currentTheme().accent, hasFocus() ? 2.0 : 1.0));
    painter.drawLine(QPointF(xOf(*reading_), kTop), QPointF(xOf(*reading_), bottom));
  }
  if (hasFocus()) {
    painter.setPen(QPen(currentTheme().accent, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

/// Where the hard rules contradict each other there is no line: the ground is hatched.
void TraceChart::drawAxis(QPainter& painter) const {
  const Theme& theme = currentTheme();
  for (const QRectF& area : {gramsArea(), lowerArea()}) {
    const double first = xOf(state_.at.front());
    const double last = xOf(state_.at.back());
    const QBrush hatch(theme.line, Qt::BDiagPattern);
    if (first > area.left() + 1)
      painter.fillRect(QRectF(area.left(), area.top(), first - area.left(), area.height()), hatch);
    if (last < area.right() - 1)
      painter.fillRect(QRectF(last, area.top(), area.right() - last, area.height()), hatch);
    painter.setPen(QPen(theme.line, 1.0));
    painter.drawLine(area.bottomLeft(), area.bottomRight());
    painter.drawLine(area.topLeft(), area.bottomLeft());
  }
  painter.setPen(theme.soft);
  const double step = niceStep(state_.high - state_.low);
  const double base = lowerArea().bottom() + painter.fontMetrics().ascent() + 2;
  for (double tick = std::ceil(state_.low / step) * step; tick <= state_.high + 1e-9 * step; tick += step) {
    const QString text = stated(std::abs(tick) < 1e-9 * step ? 0.0 : tick);
    painter.drawText(QPointF(xOf(tick) - painter.fontMetrics().horizontalAdvance(text) / 2.0, base), text);
  }
  painter.drawText(QRectF(gramsArea().left(), base + 1, gramsArea().width(), painter.fontMetrics().height()),
                   Qt::AlignCenter, state_.axis);
}

void TraceChart::drawLine(QPainter& painter, const TraceLine& line, const QRectF& area, double most,
                          int style) const {
  QPainterPath path;
  for (std::size_t k = 0; k < state_.at.size(); ++k) {
    const QPointF point(xOf(state_.at[k]), yOf(line.values[k], area, most));
    if (k == 0)
      path.moveTo(point);
    else
      path.lineTo(point);
  }
  painter.setBrush(Qt::NoBrush);
  painter.setPen(penOf(style));
  painter.drawPath(path);
  painter.setPen(Qt::NoPen);
  painter.setBrush(penOf(style).color());
  for (std::size_t k = 0; k < state_.at.size(); ++k)
    if (state_.isBreakpoint[k])
      painter.drawEllipse(QPointF(xOf(state_.at[k]), yOf(line.values[k], area, most)), 3.0, 3.0);
}

void TraceChart::drawLines(QPainter& painter) const {
  const QRectF area = gramsArea();
  double most = 0.0;
  for (const TraceLine& line : state_.grams) most = std::max(most, greatest(line.values));
  painter.setPen(currentTheme().soft);
  const double height = painter.fontMetrics().height();
  const QRectF scale(0, area.top() - height / 2, kLeft - 5, height);
  painter.drawText(scale, Qt::AlignRight | Qt::AlignVCenter, tr("%1 g").arg(measured(most)));
  painter.drawText(scale.translated(0, area.height()), Qt::AlignRight | Qt::AlignVCenter, tr("0"));
  for (int i = 0; i < static_cast<int>(state_.grams.size()); ++i)
    drawLine(painter, state_.grams[static_cast<std::size_t>(i)], area, most, i);
  nameLines(painter, area, most);
}

/// Names beside the ends of their lines, moved apart where they would lie on each other. Where not all have
/// room, the lines that change most are named (they come first) and the others counted.
void TraceChart::nameLines(QPainter& painter, const QRectF& area, double most) const {
  const double height = painter.fontMetrics().height();
  const double apart = height - 2;
  const auto room = std::max<std::size_t>(1, static_cast<std::size_t>((area.height() + height / 2) / apart));
  const bool allFit = state_.grams.size() <= room;
  const std::size_t named = allFit ? state_.grams.size() : std::max<std::size_t>(1, room - 1);
  std::vector<std::pair<double, int>> ends;
  for (std::size_t i = 0; i < named; ++i)
    ends.emplace_back(yOf(state_.grams[i].values.back(), area, most), static_cast<int>(i));
  std::ranges::sort(ends);
  double lowest = area.bottom() + height / 2 - (allFit ? 0.0 : apart);
  for (auto end = ends.rbegin(); end != ends.rend(); ++end) {
    end->first = std::min(end->first, lowest - height / 2);
    lowest = end->first + height / 2 - apart;
  }
  const auto write = [&](double top, const QColor& colour, const QString& text) {
    painter.setPen(colour);
    painter.drawText(QRectF(area.right() + 6, top, kRight - 8, height), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(kRight - 8)));
  };
  double free = area.top() - height / 2;
  for (const auto& [y, i] : ends) {
    const double top = std::max(free, y - height / 2);
    write(top, penOf(i).color(), state_.grams[static_cast<std::size_t>(i)].name);
    free = top + apart;
  }
  if (!allFit)
    write(free, currentTheme().soft,
          tr("and %n more", nullptr, static_cast<int>(state_.grams.size() - named)));
}

void TraceChart::drawLower(QPainter& painter) const {
  const QRectF area = lowerArea();
  const double height = painter.fontMetrics().height();
  const double most = greatest(state_.objective.values);
  drawLine(painter, state_.objective, area, most, 0);
  const QRectF name(area.right() + 6, area.top() - 2, kRight - 8, height);
  const auto write = [&](const QRectF& where, const QColor& colour, const QString& text) {
    painter.setPen(colour);
    painter.drawText(where, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(kRight - 8)));
  };
  write(name, currentTheme().marker, state_.objective.name);
  painter.setPen(currentTheme().soft);
  painter.drawText(QRectF(0, area.top() - height / 2, kLeft - 5, height), Qt::AlignRight | Qt::AlignVCenter,
                   measured(most));
  if (!state_.shortfall) return;
  drawLine(painter, *state_.shortfall, area, greatest(state_.shortfall->values), 3);
  write(name.translated(0, height), currentTheme().over, state_.shortfall->name);
}

void TraceChart::mouseMoveEvent(QMouseEvent* event) {
  if (!state_.at.empty()) setReading(atOf(event->position().x()));
}

void TraceChart::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || state_.at.empty()) return;
  setReading(atOf(event->position().x()));
  if (reading_) emit tried(*reading_);
}

/// Ctrl goes from breakpoint to breakpoint, an arrow alone by a fiftieth of the range.
void TraceChart::keyPressEvent(QKeyEvent* event) {
  if (state_.at.empty()) return QWidget::keyPressEvent(event);
  const double at = reading_.value_or(state_.now.value_or(state_.at.front()));
  const double part = (state_.high - state_.low) / 50.0;
  const bool jumps = event->modifiers().testFlag(Qt::ControlModifier);
  switch (event->key()) {
    case Qt::Key_Left:
      return jumps ? step(-1) : setReading(at - part);
    case Qt::Key_Right:
      return jumps ? step(1) : setReading(at + part);
    case Qt::Key_Home:
      return setReading(state_.at.front());
    case Qt::Key_End:
      return setReading(state_.at.back());
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (reading_) emit tried(*reading_);
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void TraceChart::step(int direction) {
  const double at = reading_.value_or(state_.now.value_or(state_.at.front()));
  const double same = 1e-9 * (state_.high - state_.low);
  std::optional<double> next;
  for (std::size_t k = 0; k < state_.at.size(); ++k) {
    const bool isEnd = k == 0 || k + 1 == state_.at.size();
    if (!isEnd && !state_.isBreakpoint[k]) continue;
    const double place = state_.at[k];
    if (direction > 0 && place > at + same && !next) next = place;
    if (direction < 0 && place < at - same) next = place;
  }
  if (next) setReading(*next);
}

}  // namespace tarebowl::ui
