// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/two_by_two.h"

#include <boost/math/distributions/hypergeometric.hpp>
#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tarebowl::health {

FisherTest fisherTest(const TwoByTwo& table) {
  if (!table.comparable()) return {};
  const auto signs = static_cast<unsigned>(table.signs());
  const auto eaten = static_cast<unsigned>(table.eaten());
  const unsigned all = eaten + static_cast<unsigned>(table.without());
  const boost::math::hypergeometric_distribution<double> chance(signs, eaten, all);
  const double here = boost::math::pdf(chance, static_cast<unsigned>(table.eatenSign));
  // Tables of one probability differ in their last digits.
  constexpr double kAsProbable = 1.0 + 1e-7;
  FisherTest test{0.0, 0.0};
  const unsigned most = std::min(signs, eaten);
  for (unsigned k = signs + eaten > all ? signs + eaten - all : 0; k <= most; ++k) {
    const double p = boost::math::pdf(chance, k);
    if (static_cast<std::size_t>(k) >= table.eatenSign) test.oneSided += p;
    if (p <= here * kAsProbable) test.twoSided += p;
  }
  return {std::min(1.0, test.oneSided), std::min(1.0, test.twoSided)};
}

std::optional<RiskRatio> riskRatio(const TwoByTwo& table, double confidence) {
  if (!table.comparable()) return std::nullopt;
  RiskRatio risk;
  risk.halfAdded = std::min({table.eatenSign, table.eatenWell, table.withoutSign, table.withoutWell}) == 0;
  const double more = risk.halfAdded ? 0.5 : 0.0;
  const double a = static_cast<double>(table.eatenSign) + more;
  const double c = static_cast<double>(table.withoutSign) + more;
  const double eaten = static_cast<double>(table.eaten()) + 2.0 * more;
  const double without = static_cast<double>(table.without()) + 2.0 * more;
  risk.ratio = (a / eaten) / (c / without);
  risk.standardError = std::sqrt(1.0 / a - 1.0 / eaten + 1.0 / c - 1.0 / without);
  const double z = boost::math::quantile(boost::math::normal(), (1.0 + confidence) / 2.0);
  risk.low = risk.ratio * std::exp(-z * risk.standardError);
  risk.high = risk.ratio * std::exp(z * risk.standardError);
  return risk;
}

std::vector<double> benjaminiHochberg(std::span<const double> p) {
  std::vector<std::size_t> order(p.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::sort(order, {}, [&](std::size_t i) { return p[i]; });
  std::vector<double> corrected(p.size());
  double least = 1.0;
  for (std::size_t rank = order.size(); rank > 0; --rank) {
    const std::size_t i = order[rank - 1];
    least = std::min(least, p[i] * static_cast<double>(p.size()) / static_cast<double>(rank));
    corrected[i] = least;
  }
  return corrected;
}

}  // namespace tarebowl::health
