// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/pan_doubt.h"

#include <algorithm>

namespace tarebowl::intake {

namespace {

std::optional<PanDoubt> doubtAboutWater(quantity::Grams start, quantity::Grams end) {
  if (!(end > quantity::Grams(0))) return PanDoubt::NothingLeft;
  const double kept = end / start;
  if (kept > 1.0 + kMuchGained) return PanDoubt::GainedMuch;
  if (kept < 1.0 - kMuchLost) return PanDoubt::LostMuch;
  return std::nullopt;
}

}  // namespace

std::optional<PanDoubt> doubtAbout(const ControlPan& pan, std::span<const ControlPan> others) {
  if (!(pan.start > quantity::Grams(0))) return PanDoubt::NothingAtStart;
  if (pan.end)
    if (const auto doubt = doubtAboutWater(pan.start, *pan.end)) return doubt;
  const bool isThere = std::ranges::any_of(others, [&](const ControlPan& other) {
    return other.place == pan.place && other.day == pan.day && other.food == pan.food &&
           other.foodClass == pan.foodClass;
  });
  return isThere ? std::optional(PanDoubt::TwicePut) : std::nullopt;
}

}  // namespace tarebowl::intake
