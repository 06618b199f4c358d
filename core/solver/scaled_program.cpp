// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/scaled_program.h"

#include "core/solver/power_of_two.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

/// A food without a limit may take up to this many times what the rest of the program speaks of.
constexpr double kGenerous = 1e4;
/// Without a least amount a trace of a food counts as used: above nothing, and next to nothing.
constexpr double kTrace = 1e-200;

double typicalAmount(const Program& program) {
  double typical = program.centre.size() > 0 ? program.centre.cwiseAbs().sum() : 0.0;
  for (Eigen::Index j = 0; j < program.variableCount(); ++j) {
    typical = std::max({typical, program.lower[j], program.step[j]});
    if (program.upper[j] < kInfinity) typical = std::max(typical, program.upper[j]);
  }
  return typical > 0 ? typical : 1.0;
}

}  // namespace

ScaledProgram::ScaledProgram(const Program& program)
    : source(&program),
      judge(&program),
      rows(program.rows),
      rowLower(program.rowLower),
      rowUpper(program.rowUpper),
      price(program.price),
      rowScale(program.rowCount()),
      unit(Eigen::VectorXd::Ones(program.variableCount())),
      lower(program.lower),
      upper(program.upper),
      onGrid(std::size_t(program.variableCount()), 0),
      gap(std::size_t(program.variableCount()), 1),
      threshold(Eigen::VectorXd::Zero(program.variableCount())),
      generous(std::size_t(program.variableCount()), 0) {
  const double typical = typicalAmount(program);
  for (const Choice& choice : program.choices) {
    for (const Eigen::Index j : choice.members)
      threshold[j] = std::max({threshold[j], choice.threshold, kTrace});
  }
  for (Eigen::Index j = 0; j < program.variableCount(); ++j) {
    const auto at = std::size_t(j);
    onGrid[at] = program.step[j] > 0 ? 1 : 0;
    unit[j] = onGrid[at] != 0 ? program.step[j] : powerOfTwoNear(typical / 8);
    lower[j] /= unit[j];
    threshold[j] /= unit[j];
    upper[j] = upper[j] < kInfinity ? upper[j] / unit[j] : kGenerous * typical / unit[j];
    generous[at] = program.upper[j] < kInfinity ? 0 : 1;
    if (onGrid[at] != 0) {  // limits such as 0.3 g at a step of 0.1 g are meant to be on the grid
      upper[j] = std::floor(std::min(upper[j], 2e9) * (1 + 1e-12) + 1e-9);
      lower[j] = std::ceil(lower[j] * (1 - 1e-12) - 1e-9);
      if (threshold[j] > 0) threshold[j] = std::max(1.0, std::ceil(threshold[j] * (1 - 1e-12) - 1e-9));
      gap[at] = std::max(1, static_cast<int>(std::min(threshold[j], 1e9)));
    }
    if (threshold[j] > 0 && lower[j] > 0) lower[j] = std::max(lower[j], threshold[j]);
    if (threshold[j] > 0 && upper[j] < threshold[j]) upper[j] = 0.0;
  }
  rows = rows * unit.asDiagonal();
  for (Eigen::Index i = 0; i < rows.rows(); ++i) {
    const double scale = powerOfTwoNear(rows.row(i).cwiseAbs().maxCoeff());
    rowScale[i] = scale;
    rows.row(i) /= scale;
    rowLower[i] /= scale;
    rowUpper[i] /= scale;
    price[i] *= scale;
  }
}

bool ScaledProgram::isEmptyBox() const {
  return (lower.array() > upper.array()).any();
}

PiecewiseCost ScaledProgram::rowCost(Eigen::Index row, Rows mode, double factor) const {
  const double slope = mode == Rows::Hard || !(price[row] < kInfinity) ? kInfinity : price[row] * factor;
  return PiecewiseCost::band(rowLower[row], rowUpper[row], -slope, 0.0, slope);
}

PiecewiseCost ScaledProgram::freeColumn(Eigen::Index column) const {
  return PiecewiseCost::band(lower[column], upper[column], -kInfinity, 0.0, kInfinity);
}

PiecewiseCost ScaledProgram::objectiveColumn(Eigen::Index column) const {
  const double weight = source->curvature[column] * unit[column] * unit[column];
  if (weight > 0 && onGrid[std::size_t(column)] != 0) {
    // centre chosen so that weight (k - centre)^2 has the slope of the parabola and the linear cost together
    const double centre =
        source->centre[column] / unit[column] - source->cost[column] * unit[column] / (2 * weight);
    return PiecewiseCost::grid(weight, centre, int(lower[column]), int(upper[column]),
                               gap[std::size_t(column)]);
  }
  return PiecewiseCost::band(lower[column], upper[column], -kInfinity, source->cost[column] * unit[column],
                             kInfinity);
}

}  // namespace tarebowl::solver
