// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/animals/mass_chart_state.h"
#include "ui/shared/bare_chart.h"

class QDateTimeAxis;
class QLineSeries;
class QScatterSeries;
class QValueAxis;

namespace tarebowl::ui {

/// Body mass over time, and condition on its own scale at the right. A doubtful reading is a triangle, one
/// that was left out a hollow square, and the legend says so.
class MassChart : public BareChart {
  Q_OBJECT
 public:
  explicit MassChart(QWidget* parent = nullptr);
  void show(const MassChartState& state);
  [[nodiscard]] const MassChartState& state() const { return state_; }

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void rebuild();
  void addAxes(const MassSpan& span);
  void addLine(std::size_t line);
  void addScores();
  [[nodiscard]] QScatterSeries* makeMarks(const QString& name, int shape, const QColor& fill,
                                          const QColor& edge);

  MassChartState state_;
  QDateTimeAxis* days_ = nullptr;
  QValueAxis* masses_ = nullptr;
  QScatterSeries* doubtful_ = nullptr;
  QScatterSeries* leftOut_ = nullptr;
};

}  // namespace tarebowl::ui
