// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/health/health_desk.h"
#include "ui/shared/bare_chart.h"

#include <string>
#include <utility>
#include <vector>

class QDateTimeAxis;
class QScatterSeries;
class QValueAxis;
class QXYSeries;

namespace tarebowl::ui {

/// Signs, blood, treatments, condition, body mass, Ca:P as eaten and offered and the beginnings of diet
/// versions on one axis of days. A point says what it is where the mouse rests on it. A stretch is looked at
/// closer by dragging over it, by the wheel and by + and -; 0 shows all again.
class HealthTimeline : public BareChart {
  Q_OBJECT
 public:
  explicit HealthTimeline(QWidget* parent = nullptr);
  void show(const HealthView& view);
  /// factor above 1: closer, about the middle of what is in sight.
  void zoom(double factor);
  void showAll();
  [[nodiscard]] double daysInSight() const;

 protected:
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  void rebuild();
  void addAxes();
  void addRatio();
  void addMasses();
  void addSigns();
  void addBlood();
  void addTreatments();
  void addConditions();
  void addDiets();
  void place(QXYSeries& series, QValueAxis& axis);
  /// Points in a lane of their own; texts: what each says, in the order of the points.
  void placeLane(QScatterSeries& lane, double height,
                 const std::vector<std::pair<quantity::Date, QString>>& points);
  void hideFromLegend(QXYSeries& series);

  std::optional<HealthView> view_;
  QDateTimeAxis* days_ = nullptr;
  QValueAxis* ratio_ = nullptr;
  QValueAxis* mass_ = nullptr;
  QValueAxis* condition_ = nullptr;  ///< 0 … 1: the scales of scores differ
};

}  // namespace tarebowl::ui
