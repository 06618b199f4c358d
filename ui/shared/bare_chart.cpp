// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/bare_chart.h"

#include <QChart>
#include <QGraphicsLayout>
#include <QLegend>
#include <QLocale>

namespace tarebowl::ui {

BareChart::BareChart(QWidget* parent) : QChartView(new QChart, parent) {
  setFrameShape(NoFrame);
  setRenderHint(QPainter::Antialiasing);
  setBackgroundBrush(Qt::NoBrush);
  setStyleSheet(QStringLiteral("background: transparent"));
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setFocusPolicy(Qt::NoFocus);
  viewport()->setFocusPolicy(Qt::NoFocus);
  chart()->setBackgroundVisible(false);
  chart()->setMargins({});
  chart()->layout()->setContentsMargins(0, 0, 0, 0);
  chart()->legend()->hide();
  chart()->setLocale(QLocale());
  chart()->setLocalizeNumbers(true);
}

}  // namespace tarebowl::ui
