// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shared/bare_chart.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

class QGraphicsItem;

namespace tarebowl::ui {

/// One food's line: a bar per series, and what stands beside it.
struct ContributionRow {
  QString food;
  std::vector<std::optional<double>> amounts;  ///< one per series; nothing where unknown
  QString label;                               ///< "27 mg · 41 %"
  QString source;                              ///< where the value comes from
};

/// All that a contribution chart shows, without knowing a diet.
struct ContributionChartState {
  QString title;
  QStringList series;  ///< one, or two for a ratio
  std::vector<ContributionRow> rows;
};

/// Horizontal bars, the greatest first. Foods beyond the first few are summed up by whoever made the state.
class ContributionChart : public BareChart {
  Q_OBJECT
 public:
  explicit ContributionChart(QWidget* parent = nullptr);
  void show(const ContributionChartState& state);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void rebuild();
  void placeLabels();
  void placeLegend();
  void placeRow(const ContributionRow& row, double top);
  /// Returns where the text ends.
  double put(const QString& text, const QFont& face, const QColor& color, double x, double top, double room);
  [[nodiscard]] QRectF plotArea() const;

  ContributionChartState state_;
  std::vector<QGraphicsItem*> labels_;  ///< what the chart itself cannot write
};

}  // namespace tarebowl::ui
