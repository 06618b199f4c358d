// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChartView>

namespace tarebowl::ui {

/// A chart on the card's own ground: no frame, margins, legend or scroll bars of its own, and no stop of the
/// Tab key.
class BareChart : public QChartView {
  Q_OBJECT

 public:
  explicit BareChart(QWidget* parent = nullptr);
};

}  // namespace tarebowl::ui
