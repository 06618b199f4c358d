// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/student.h"

#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace tarebowl::intake {

double studentQuantile(double p, double freedom) {
  return boost::math::quantile(boost::math::students_t(freedom), p);
}

double meanHalfWidth(double sd, double n, double confidence) {
  return studentQuantile((1.0 + confidence) / 2.0, n - 1.0) * sd / std::sqrt(n);
}

}  // namespace tarebowl::intake
