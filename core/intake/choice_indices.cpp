// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/choice_indices.h"

namespace tarebowl::intake {

std::optional<double> forageRatio(double r, double p) {
  if (!(p > 0.0)) return std::nullopt;
  return r / p;
}

std::optional<double> ivlevE(double r, double p) {
  if (!(r + p > 0.0)) return std::nullopt;
  return (r - p) / (r + p);
}

std::optional<double> jacobsD(double r, double p) {
  const double divisor = r + p - 2.0 * r * p;
  if (!(divisor > 0.0)) return std::nullopt;
  return (r - p) / divisor;
}

double straussL(double r, double p) {
  return r - p;
}

std::optional<std::vector<double>> alphaOfConstantOffer(std::span<const double> r,
                                                        std::span<const double> p) {
  std::vector<double> alpha;
  double sum = 0.0;
  for (std::size_t i = 0; i < r.size(); ++i) {
    const auto ratio = forageRatio(r[i], p[i]);
    if (!ratio) return std::nullopt;
    alpha.push_back(*ratio);
    sum += *ratio;
  }
  if (!(sum > 0.0)) return std::nullopt;
  for (double& value : alpha) value /= sum;
  return alpha;
}

double chessonEpsilon(double alpha, std::size_t m) {
  const auto count = static_cast<double>(m);
  return (count * alpha - 1.0) / ((count - 2.0) * alpha + 1.0);
}

double relativizedE(double alpha, std::size_t m) {
  const double neutral = 1.0 / static_cast<double>(m);
  return (alpha - neutral) / (alpha + neutral);
}

}  // namespace tarebowl::intake
