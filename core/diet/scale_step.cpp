// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/scale_step.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

constexpr double kPartsPerGram =
    1e6;  // a step is written with six decimals at most, else it is no decimal step
constexpr double kLargestExact = 1LL << 53;  // whole numbers up to here are exact

}  // namespace

quantity::Grams nearestOnScale(quantity::Grams amount, quantity::Grams step) {
  if (!(step.value() > 0.0)) return amount;
  const double steps = std::round(amount.value() / step.value());
  const double parts = std::round(step.value() * kPartsPerGram);
  const bool isDecimal = parts / kPartsPerGram == step.value();
  if (!isDecimal || std::abs(steps * parts) > kLargestExact) return quantity::Grams(steps * step.value());
  return quantity::Grams(steps * parts /
                         kPartsPerGram);  // whole numbers divided once: the nearest number to the decimal
}

bool isOnScale(quantity::Grams amount, quantity::Grams step) {
  const double away = std::abs((nearestOnScale(amount, step) - amount).value());
  return away <= 1e-9 * std::max(1.0, amount.value());
}

}  // namespace tarebowl::diet
