// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/tolerance.h"

#include <QWidget>

#include <optional>

namespace tarebowl::ui {

/// A weight against its plan, in big type: the zone of the tolerance, where the weight stands, and the state
/// as shape, word and colour.
class ToleranceBar : public QWidget {
  Q_OBJECT
 public:
  explicit ToleranceBar(QWidget* parent = nullptr);

  void setPlan(quantity::Grams planned, quantity::Grams tolerance);
  /// Nothing: no weight yet.
  void setWeight(std::optional<quantity::Grams> actual);
  [[nodiscard]] std::optional<intake::WeightState> state() const;

  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintTrack(QPainter& painter, const QRectF& track) const;
  void tell();

  quantity::Grams planned_{};
  quantity::Grams tolerance_{};
  std::optional<quantity::Grams> actual_;
};

}  // namespace tarebowl::ui
