// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/intake_view.h"
#include "ui/shared/bare_chart.h"

#include <QPen>
#include <QPoint>

#include <optional>
#include <vector>

class QDateTimeAxis;
class QValueAxis;

namespace tarebowl::ui {

/// A chart over days that a hand moves: dragged to and fro, looked at closer by the wheel or by + and -, left
/// and right keys move it, 0 shows all. It says which days are sought; who owns it shows them.
class TimeChart : public BareChart {
  Q_OBJECT
 public:
  explicit TimeChart(const QString& accessibleName, QWidget* parent = nullptr);

  /// The days in sight, at once and with what is there already.
  void setSpan(const DaySpan& span);
  [[nodiscard]] const DaySpan& span() const { return span_; }

 signals:
  void spanSought(const tarebowl::ui::DaySpan& span);
  void allSought();

 protected:
  /// What a day says when it is pointed at; empty: nothing.
  [[nodiscard]] virtual QString told(QDate day) const = 0;
  virtual void rebuild() = 0;

  /// What a colour stands for: a patch, or a line as it is drawn.
  struct LegendEntry {
    QString name{};
    QPen pen{};
    bool isPatch = false;
  };
  void beginAnew(double low, double high, const QString& labelFormat);
  void place(QAbstractSeries& series);
  /// Above the plot, in as many rows as the names need: Qt's own legend cuts them.
  void setLegend(std::vector<LegendEntry> entries);
  /// Where a day begins, and a value stands, in the widget.
  [[nodiscard]] double xOf(QDate day) const;
  [[nodiscard]] double yOf(double value) const;
  [[nodiscard]] double top() const;
  [[nodiscard]] double bottom() const;
  /// A hatched column over days of which nothing is known.
  void paintMissing(QPainter& painter, const std::vector<ChartDays>& points) const;

  void drawForeground(QPainter* painter, const QRectF& rect) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

 private:
  void zoom(double factor, QDate about);
  void move(int days);
  [[nodiscard]] QDate dayAt(double x) const;
  void showDays();
  void layOutLegend();

  DaySpan span_{};
  std::vector<LegendEntry> legend_;
  std::vector<QPointF> legendAt_;
  QDateTimeAxis* days_ = nullptr;
  QValueAxis* values_ = nullptr;
  std::optional<QPoint> held_;
  DaySpan heldSpan_{};
};

/// Noon and beginning of a day as charts count.
[[nodiscard]] double millisAt(QDate day, int hour = 0);

}  // namespace tarebowl::ui
