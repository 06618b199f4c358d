// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/time_chart.h"

namespace tarebowl::ui {

/// A nutrient or a ratio as eaten, with its uncertainty, against its zone and against what was offered. Gaps
/// stay gaps; days on which it fell below the group's own history bear a mark.
class ValueChart : public TimeChart {
  Q_OBJECT
 public:
  explicit ValueChart(const QString& accessibleName, QWidget* parent = nullptr);

  void show(ValueLine line);

 protected:
  [[nodiscard]] QString told(QDate day) const override;
  void rebuild() override;
  void drawBackground(QPainter* painter, const QRectF& rect) override;

 private:
  void addRuns(const QPen& pen, const std::vector<std::optional<double>>& values);
  void paintZone(QPainter& painter) const;
  void paintDoubt(QPainter& painter) const;
  void paintDrops(QPainter& painter) const;
  [[nodiscard]] double highest() const;

  ValueLine line_;
};

}  // namespace tarebowl::ui
