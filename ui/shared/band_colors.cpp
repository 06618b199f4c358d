// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shared/band_colors.h"

namespace tarebowl::ui {
namespace {

QColor mixed(const QColor& a, const QColor& b, float part) {
  const auto mix = [part](float x, float y) { return x + (y - x) * part; };
  return QColor::fromRgbF(mix(a.redF(), b.redF()), mix(a.greenF(), b.greenF()), mix(a.blueF(), b.blueF()));
}

}  // namespace

QColor bandColor(const Theme& theme, int band) {
  constexpr float kPale = 0.5F;
  constexpr float kDeep = 0.45F;
  switch (band) {
    case 0:
      return theme.bar;
    case 1:
      return mixed(theme.secondBar, theme.card, kPale);
    case 2:
      return mixed(theme.bar, theme.ink, kDeep);
    case 3:
      return mixed(theme.bar, theme.card, kPale);
    case 4:
      return theme.secondBar;
    case 5:
      return mixed(theme.secondBar, theme.ink, kDeep);
    default:
      return mixed(theme.unknown, theme.card, kPale);
  }
}

}  // namespace tarebowl::ui
