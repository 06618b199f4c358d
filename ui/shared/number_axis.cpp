// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/number_axis.h"

#include <QString>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace tarebowl::ui {

namespace {

struct Step {
  double size = 1.0;
  int decimals = 0;
};

/// The first of 1, 2, 5, 10, 20 … that is no less.
Step roundStep(double least) {
  const int power = static_cast<int>(std::floor(std::log10(least)));
  const double unit = std::pow(10.0, power);
  for (const double of : {1.0, 2.0, 5.0})
    if (of * unit >= least * (1.0 - 1e-9)) return {of * unit, std::max(0, -power)};
  return {10.0 * unit, std::max(0, -power - 1)};
}

}  // namespace

void setRoundRange(QValueAxis& axis, double low, double high, int mostSteps) {
  // A little too low or high is no reason for one step more.
  constexpr double kSlack = 1e-6;
  Step step = roundStep((high - low) / mostSteps);
  double first = std::floor(low / step.size + kSlack);
  double last = std::ceil(high / step.size - kSlack);
  while (last - first > mostSteps) {
    step = roundStep(step.size * 1.5);
    first = std::floor(low / step.size + kSlack);
    last = std::ceil(high / step.size - kSlack);
  }
  axis.setRange(first * step.size, last * step.size);
  axis.setTickCount(static_cast<int>(last - first) + 1);
  axis.setLabelFormat(QStringLiteral("%.%1f").arg(step.decimals));
}

}  // namespace tarebowl::ui
