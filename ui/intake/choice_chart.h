// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/time_chart.h"

namespace tarebowl::ui {

/// What is picked first: Manly's alpha of each food with its interval, period after period, and the line at
/// which nothing is preferred.
class ChoiceChart : public TimeChart {
  Q_OBJECT
 public:
  explicit ChoiceChart(QWidget* parent = nullptr);

  void show(ChoiceLines lines);

 protected:
  [[nodiscard]] QString told(QDate day) const override;
  void rebuild() override;
  void drawBackground(QPainter* painter, const QRectF& rect) override;

 private:
  /// Foods stand side by side within a period, so that their intervals can be told apart.
  [[nodiscard]] double xOfFood(std::size_t food, const DaySpan& period) const;

  ChoiceLines lines_;
};

}  // namespace tarebowl::ui
