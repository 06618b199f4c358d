// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/band_colors.h"

#include <array>

namespace tarebowl::ui {
namespace {

constexpr float kPale = 0.3F;
constexpr float kFaint = 0.2F;

QColor mixed(const QColor& a, const QColor& b, float part) {
  const auto mix = [part](float x, float y) { return x + (y - x) * part; };
  return QColor::fromRgbF(mix(a.redF(), b.redF()), mix(a.greenF(), b.greenF()), mix(a.blueF(), b.blueF()));
}

}  // namespace

QColor bandColor(const Theme& theme, int band) {
  constexpr float kDeep = 0.5F;
  switch (band) {
    case 0:
      return theme.bar;
    case 1:
      return mixed(theme.secondBar, theme.ink, kDeep);
    case 2:
      return mixed(theme.secondBar, theme.card, kPale / (theme.dark ? 1 : 2));
    case 3:
      return mixed(theme.bar, theme.ink, kDeep);
    case 4:
      return mixed(theme.over, theme.card, kPale);
    case 5:
      return theme.marker;
    default:
      return mixed(theme.unknown, theme.card, kFaint);
  }
}

Qt::PenStyle bandStyle(int band) {
  constexpr std::array kStyles{Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine, Qt::DashDotDotLine};
  return kStyles.at(static_cast<std::size_t>(band) % kStyles.size());
}

}  // namespace tarebowl::ui
