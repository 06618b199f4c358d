// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/optimality.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

/// How far an activity is from where its multiplier puts it, times nothing: a distance, relative to the row's
/// terms.
double rowError(const PricedRows& program, Eigen::Index i, const Eigen::VectorXd& z, double multiplier,
                double small, double tolerance) {
  const double activity = program.rows.row(i).dot(z);
  const double scale = 1.0 + program.rows.row(i).cwiseAbs().dot(z.cwiseAbs().transpose());
  const double price = program.price[i];
  double error = 0.0;
  const double above = (activity - program.rowUpper[i]) / scale;
  const double below = (program.rowLower[i] - activity) / scale;
  if (multiplier > small) error = std::max(error, -above);  // pushes only at or beyond the bound
  if (multiplier < -small) error = std::max(error, -below);
  if (multiplier < price * (1 - tolerance))
    error = std::max(error, above);  // beyond it only at the full price
  if (multiplier > -price * (1 - tolerance)) error = std::max(error, below);
  if (price < kInfinity) error = std::max(error, (std::abs(multiplier) - price) / (1.0 + price));
  return error;
}

}  // namespace

double optimalityError(const PricedRows& program, const Eigen::VectorXd& objectiveGradient,
                       const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers) {
  constexpr double kTolerance = 1e-9;
  double worst = 0.0;
  const double small =
      kTolerance * (1.0 + (multipliers.size() > 0 ? multipliers.cwiseAbs().maxCoeff() : 0.0));
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i) {
    worst = std::max(worst, rowError(program, i, z, multipliers[i], small, kTolerance));
  }
  const Eigen::VectorXd pushed = program.rows.transpose() * multipliers;
  const Eigen::VectorXd pushedScale = program.rows.cwiseAbs().transpose() * multipliers.cwiseAbs();
  for (Eigen::Index j = 0; j < z.size(); ++j) {
    const double size = 1.0 + std::abs(z[j]);
    worst = std::max({worst, (program.lower[j] - z[j]) / size, (z[j] - program.upper[j]) / size});
    const double residual =
        (objectiveGradient[j] + pushed[j]) / (1.0 + std::abs(objectiveGradient[j]) + pushedScale[j]);
    const bool mayRise = z[j] < program.upper[j] - kTolerance * size;
    const bool mayFall = z[j] > program.lower[j] + kTolerance * size;
    if (mayRise) worst = std::max(worst, -residual);
    if (mayFall) worst = std::max(worst, residual);
  }
  return worst;
}

}  // namespace tarebowl::solver
