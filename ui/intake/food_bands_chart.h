// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/intake/time_chart.h"

namespace tarebowl::ui {

/// Grams of each food a day, food on food: what was offered, what was eaten, or both: what was eaten is full,
/// what was left of it hatched above it.
class FoodBandsChart : public TimeChart {
  Q_OBJECT
 public:
  enum class Shows { Offered, Both, Eaten };
  explicit FoodBandsChart(QWidget* parent = nullptr);

  void show(FoodBands bands);
  void setShows(Shows shows);

 protected:
  [[nodiscard]] QString told(QDate day) const override;
  void rebuild() override;
  void drawBackground(QPainter* painter, const QRectF& rect) override;

 private:
  void addBand(const QBrush& brush, const std::vector<double>& low, const std::vector<double>& high);
  [[nodiscard]] double highest() const;

  FoodBands bands_;
  Shows shows_ = Shows::Both;
};

}  // namespace tarebowl::ui
