// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/optimality.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kTolerance = 1e-9;  // for telling whether a value is at a limit, a multiplier at its price
constexpr double kPlain =
    1e-13;  // errors this small beside a lower bound of the terms' size need no closer look

double amountOf(const PricedRows& program, Eigen::Index column) {
  return program.amount != nullptr ? (*program.amount)[column] : 1.0;
}

}  // namespace

void OptimalityCheck::reserve(Eigen::Index rows, Eigen::Index columns) {
  activity_.resize(rows);
  pushed_.resize(columns);
}

double OptimalityCheck::error(const PricedRows& program, const Eigen::VectorXd& gradient,
                              const Eigen::VectorXd& gradientSize, const Eigen::VectorXd& z,
                              const Eigen::VectorXd& multipliers, double small) {
  double worst = 0.0;
  const double largest = small > 0 && multipliers.size() > 0 ? multipliers.cwiseAbs().maxCoeff() : 0.0;
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i) {
    worst = std::max(worst, rowError(program, i, z, multipliers[i], small * largest));
  }
  pushed_ = gradient;
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i) {
    if (multipliers[i] != 0.0) pushed_ += multipliers[i] * program.rows.row(i).transpose();
  }
  for (Eigen::Index j = 0; j < z.size(); ++j) {
    worst = std::max(worst, columnError(program, j, gradient[j], gradientSize[j], z[j], multipliers));
  }
  return worst;
}

/// How far an activity is from where its multiplier puts it, or a multiplier from its range.
double OptimalityCheck::rowError(const PricedRows& program, Eigen::Index i, const Eigen::VectorXd& z,
                                 double multiplier, double small) const {
  const double price = program.price[i] < kInfinity && program.priceFactor < kInfinity
                           ? program.price[i] * program.priceFactor
                           : kInfinity;
  const double above = activity_[i] - program.rowUpper[i];
  const double below = program.rowLower[i] - activity_[i];
  double distance = 0.0;
  if (multiplier > small) distance = std::max(distance, -above);  // pushes only at or beyond the bound
  if (multiplier < -small) distance = std::max(distance, -below);
  if (multiplier < price * (1 - kTolerance))
    distance = std::max(distance, above);  // beyond only at full price
  if (multiplier > -price * (1 - kTolerance)) distance = std::max(distance, below);
  double error = 0.0;
  if (distance > kPlain * std::abs(activity_[i])) {
    double size = 0.0;
    for (Eigen::Index j = 0; j < z.size(); ++j)
      size += std::abs(program.rows(i, j)) * std::max(std::abs(z[j]), amountOf(program, j));
    error = distance < kInfinity && size > 0 ? distance / size : kInfinity;
  }
  if (price < kInfinity && std::abs(multiplier) > price)
    error = std::max(error, std::abs(multiplier) / price - 1.0);
  return error;
}

double OptimalityCheck::columnError(const PricedRows& program, Eigen::Index j, double gradient, double size,
                                    double z, const Eigen::VectorXd& multipliers) const {
  const double amount = std::max({std::abs(z), std::abs(program.lower[j]), amountOf(program, j)});
  const double reach = kTolerance * amount;
  double outside = std::max({0.0, program.lower[j] - z, z - program.upper[j]});
  outside /= amount;
  const bool mayRise = z < program.upper[j] - reach;
  const bool mayFall = z > program.lower[j] + reach;
  double residual = 0.0;
  if (mayRise) residual = std::max(residual, -pushed_[j]);
  if (mayFall) residual = std::max(residual, pushed_[j]);
  if (residual <= kPlain * std::abs(gradient)) return outside;
  double terms = size;
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i)
    terms += std::abs(multipliers[i] * program.rows(i, j));
  return std::max(outside, terms > 0 ? residual / terms : kInfinity);
}

double optimalityError(const PricedRows& program, const Eigen::VectorXd& objectiveGradient,
                       const Eigen::VectorXd& z, const Eigen::VectorXd& multipliers) {
  OptimalityCheck check;
  check.reserve(program.rows.rows(), program.rows.cols());
  check.measure(program.rows, z);
  const Eigen::VectorXd size = objectiveGradient.cwiseAbs().array() + 1.0;
  return check.error(program, objectiveGradient, size, z, multipliers, kTolerance);
}

}  // namespace tarebowl::solver
