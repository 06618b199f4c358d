// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/intake/chart_picture.h"

#include "ui/shared/theme.h"

#include <QPainter>
#include <QWidget>

namespace tarebowl::ui {

QImage pictureOf(const QString& title, QWidget& chart, const QSize& otherwise) {
  if (!chart.isVisible()) chart.resize(otherwise);
  constexpr int kTitle = 22;
  constexpr int kFiner = 2;
  const QSize size(chart.width(), chart.height() + kTitle);
  QImage image(size * kFiner, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(kFiner);
  image.fill(currentTheme().card);
  QPainter painter(&image);
  painter.setPen(currentTheme().ink);
  painter.drawText(QRect(4, 0, size.width() - 8, kTitle), Qt::AlignLeft | Qt::AlignVCenter, title);
  chart.render(&painter, QPoint(0, kTitle), QRegion(), QWidget::DrawChildren);
  return image;
}

}  // namespace tarebowl::ui
