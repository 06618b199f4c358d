// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <cmath>

namespace tarebowl::solver {

/// high * lambda + low with a lambda beyond every number: what a multiplier is while the first stage counts
/// for infinitely more than the second. No number is put in for lambda, so nothing of the second stage is
/// rounded away.
struct TwoLevel {
  double high = 0.0;
  double low = 0.0;

  /// Parts times lambda that differ in their last digits only are the same: the rest decides.
  friend bool operator<(const TwoLevel& a, const TwoLevel& b) {
    constexpr double kSame = 1e-11;
    if (a.high < b.high - kSame * std::abs(b.high)) return true;
    return a.high <= b.high + kSame * std::abs(b.high) && a.low < b.low;
  }
  [[nodiscard]] bool isFinite() const { return high < kInfinity && low < kInfinity; }
  [[nodiscard]] double at(double lambda) const { return high * lambda + low; }
};

inline constexpr TwoLevel kWithoutEnd{kInfinity, kInfinity};

/// a + change, where what is left of two numbers that cancel to their last digits counts as 0.
[[nodiscard]] inline double cancelled(double a, double change) {
  constexpr double kLastDigits = 2e-11;
  const double sum = a + change;
  return std::abs(sum) <= kLastDigits * (std::abs(a) + std::abs(change)) ? 0.0 : sum;
}

}  // namespace tarebowl::solver
