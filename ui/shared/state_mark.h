// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "ui/shared/theme.h"

#include <QPainterPath>
#include <QString>
#include <QWidget>

class QPainter;

/// State is always shape + word + colour, so that it reads in greyscale and to a colour-blind eye.
namespace tarebowl::ui {

enum class Mark { Met, AtLimit, Lacking, Over, Unknown };

[[nodiscard]] Mark markOf(diet::TargetState state);
/// "met", "at limit", "short", "over", "unknown".
[[nodiscard]] QString wordOf(Mark mark);
[[nodiscard]] QColor colorOf(Mark mark, const Theme& theme);

/// Disc, half disc, triangle down, triangle up or question mark, drawn so that it needs no symbol font.
void paintMark(QPainter& painter, const QRectF& box, Mark mark, const Theme& theme);

/// A mark as a small widget beside a sentence.
class MarkWidget : public QWidget {
  Q_OBJECT
 public:
  explicit MarkWidget(Mark mark, QWidget* parent = nullptr);
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  Mark mark_;
};

}  // namespace tarebowl::ui
