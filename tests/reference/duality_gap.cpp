// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/duality_gap.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace tarebowl::reference {

using solver::kInfinity;
using solver::Program;

namespace {

/// least of curvature (x - centre)^2 + slope x between two limits.
double leastOf(double curvature, double centre, double slope, double low, double high) {
  double x = slope >= 0 ? low : high;
  if (curvature > 0) x = std::clamp(centre - slope / (2 * curvature), low, high);
  if (std::isinf(x)) return -kInfinity;
  return curvature * (x - centre) * (x - centre) + slope * x;
}

}  // namespace

double lowerBound(const Program& program, const Eigen::VectorXd& multipliers, double budget, double flat) {
  double bound = 0;
  double priceOfBudget = 0;
  Eigen::VectorXd y = multipliers;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    const double side = y[i] > 0 ? program.rowLower[i] : program.rowUpper[i];
    if (std::isinf(side)) y[i] = 0;  // no bound there that could push
    if (y[i] == 0) continue;
    bound += y[i] * side;
    if (!std::isinf(program.price[i]))
      priceOfBudget = std::max(priceOfBudget, std::abs(y[i]) / program.price[i]);
  }
  bound -= priceOfBudget * budget;
  for (Eigen::Index j = 0; j < program.variableCount(); ++j) {
    const double pushed = program.rows.col(j).dot(y);
    const double parts = std::abs(program.cost[j]) + program.rows.col(j).cwiseAbs().dot(y.cwiseAbs());
    double slope = program.cost[j] - pushed;
    if (std::isinf(program.upper[j]) && std::abs(slope) <= flat * parts) slope = std::max(slope, 0.0);
    bound += leastOf(program.curvature[j], program.centre[j], slope, program.lower[j], program.upper[j]);
  }
  return bound;
}

Program shortfallAsObjective(const Program& program) {
  std::vector<Eigen::Index> elastic;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i)
    if (!std::isinf(program.price[i])) elastic.push_back(i);
  const Eigen::Index n = program.variableCount();
  const Eigen::Index all = n + 2 * static_cast<Eigen::Index>(elastic.size());  // below and above
  Program stage = program;
  stage.rows.conservativeResize(Eigen::NoChange, all);
  stage.rows.rightCols(all - n).setZero();
  stage.price.setConstant(kInfinity);
  for (Eigen::VectorXd* each : {&stage.lower, &stage.centre, &stage.curvature, &stage.cost, &stage.step}) {
    each->conservativeResize(all);
    each->tail(all - n).setZero();
  }
  stage.curvature.setZero();
  stage.cost.setZero();
  stage.upper.conservativeResize(all);
  stage.upper.tail(all - n).setConstant(kInfinity);
  Eigen::Index column = n;
  for (const Eigen::Index row : elastic)
    for (const double sign : {1.0, -1.0}) {
      stage.rows(row, column) = sign / program.price[row];  // in the row's own units
      stage.cost[column++] = 1.0;
    }
  return stage;
}

}  // namespace tarebowl::reference
