// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/uncertain_text.h"

#include "core/exchange/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace tarebowl::exchange {

std::string uncertainText(std::optional<double> value, double sd) {
  constexpr int kSignificant = 2;
  constexpr int kMostDecimals = 9;
  if (!value || !(sd > 0.0) || !std::isfinite(sd)) return shortNumber(value);
  const auto place = [](double number) {
    return static_cast<int>(std::floor(std::log10(number))) - (kSignificant - 1);
  };
  // 0.0996 is 0.10: what rounds up to another digit has one place less.
  const double rounded = std::round(sd / std::pow(10.0, place(sd))) * std::pow(10.0, place(sd));
  const double unit = std::pow(10.0, place(rounded * (1.0 + 1e-9)));
  const int decimals = std::clamp(-place(rounded * (1.0 + 1e-9)), 0, kMostDecimals);
  const double shown = std::round(*value / unit) * unit;
  return fmt::format("{:.{}f} ± {:.{}f}", shown == 0.0 ? 0.0 : shown, decimals, rounded, decimals);
}

}  // namespace tarebowl::exchange
