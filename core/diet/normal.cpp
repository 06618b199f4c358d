// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/normal.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <limits>

namespace tarebowl::diet {

double normalProbability(double z) {
  return boost::math::cdf(boost::math::normal(), z);
}

double normalQuantile(double p) {
  constexpr double kEdge = std::numeric_limits<double>::epsilon();
  return boost::math::quantile(boost::math::normal(), std::clamp(p, kEdge, 1.0 - kEdge));
}

}  // namespace tarebowl::diet
