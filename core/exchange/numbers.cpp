// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/numbers.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdint>

namespace tarebowl::exchange {

std::optional<int> digitsOf(quantity::Grams scaleStep) {
  constexpr int kMostDigits = 6;
  double scale = 1.0;
  for (int digits = 0; digits <= kMostDigits; ++digits, scale *= 10.0) {
    const double scaled = scaleStep.value() * scale;
    if (std::abs(scaled - std::round(scaled)) <= 1e-9 * scaled) return digits;
  }
  return std::nullopt;
}

quantity::Grams onScale(quantity::Grams grams, quantity::Grams scaleStep) {
  constexpr double kDust = 1e-6;  // of a step
  const double steps = std::round(grams / scaleStep);
  const std::optional<int> digits = digitsOf(scaleStep);
  if (!digits || std::abs(grams / scaleStep - steps) > kDust) return grams;
  const double scale = std::pow(10.0, *digits);
  return quantity::Grams(std::round(steps * scaleStep.value() * scale) / scale + 0.0);
}

nlohmann::ordered_json toJson(double number) {
  constexpr double kExactWhole = 9007199254740992.0;  // 2^53: whole doubles below it are exact as integers
  if (!std::isfinite(number)) return nullptr;
  if (std::abs(number) < kExactWhole && number == std::floor(number))
    return static_cast<std::int64_t>(number);
  return number;
}

nlohmann::ordered_json toJson(std::optional<double> number) {
  return number ? toJson(*number) : nlohmann::ordered_json(nullptr);
}

std::string toText(const nlohmann::ordered_json& document) {
  return document.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

}  // namespace tarebowl::exchange
