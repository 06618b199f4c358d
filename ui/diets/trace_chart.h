// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/explore.h"

#include <QStringList>
#include <QWidget>

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// A line of the chart: a number at each point of the trace.
struct TraceLine {
  QString name;
  std::vector<double> values;
};

/// All that a trace chart shows. It knows no diet.
struct TraceChartState {
  std::vector<double> at;  ///< rising, in the unit that is shown
  std::vector<bool> isBreakpoint;
  std::vector<TraceLine> grams;  ///< the foods, one line each
  TraceLine objective;
  std::optional<TraceLine> shortfall;  ///< where anything is missed
  std::optional<double> now;           ///< where the bound is
  double low = 0.0;                    ///< the range that was asked for
  double high = 1.0;
  QString axis;
};

/// Lines through the exact points of a trace: foods above, what is sought and what is missed below.
/// Breakpoints are dots. A hand or the arrow keys read it; Enter or a click tries what is read.
class TraceChart : public QWidget {
  Q_OBJECT
 public:
  explicit TraceChart(QWidget* parent = nullptr);
  void show(TraceChartState state);
  [[nodiscard]] std::optional<double> reading() const { return reading_; }
  void setReading(std::optional<double> at);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 signals:
  /// In the unit that is shown.
  void readAt(double at);
  void tried(double at);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] QRectF gramsArea() const;
  [[nodiscard]] QRectF lowerArea() const;
  [[nodiscard]] double xOf(double at) const;
  [[nodiscard]] double atOf(double x) const;
  void drawAxis(QPainter& painter) const;
  void drawLines(QPainter& painter) const;
  void nameLines(QPainter& painter, const QRectF& area, double most) const;
  void drawLower(QPainter& painter) const;
  void drawLine(QPainter& painter, const TraceLine& line, const QRectF& area, double most, int style) const;
  void step(int direction);

  TraceChartState state_;
  std::optional<double> reading_;
};

}  // namespace tarebowl::ui
