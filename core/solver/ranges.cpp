// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/ranges.h"

#include "core/solver/chance.h"
#include "core/solver/continuous.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kPushes = 1e-7;  // share of the largest multiplier
constexpr double kPrecision = 1e-7;
constexpr double kNoViolation = 1e-9;

/// The gradient of each row at x: with scatter that of the side that counts.
RowMatrix gradients(const Program& program, const Pressure& pressure) {
  RowMatrix rows = program.rows;
  if (!hasScatter(program)) return rows;
  for (Eigen::Index i = 0; i < rows.rows(); ++i) {
    const Eigen::ArrayXd scatter = program.scatter->row(i).transpose().array();
    const double spread = (scatter * pressure.x.array()).matrix().norm();
    if (!(spread > 0.0)) continue;
    const Eigen::ArrayXd slope = scatter.square() * pressure.x.array() / spread;
    rows.row(i) += (pressure.rows[i] > 0.0 ? 1.0 : -1.0) * slope.matrix().transpose();
  }
  return rows;
}

/// What is left of terms that cancel to their last digits pushes nothing.
void addColumns(Pressure& pressure, const Program& program, const Eigen::VectorXd& objectiveGradient) {
  const RowMatrix rows = gradients(program, pressure);
  const Eigen::VectorXd terms =
      objectiveGradient.cwiseAbs() + rows.cwiseAbs().transpose() * pressure.rows.cwiseAbs();
  pressure.columns = -(objectiveGradient + rows.transpose() * pressure.rows);
  for (Eigen::Index j = 0; j < pressure.columns.size(); ++j) {
    if (std::abs(pressure.columns[j]) <= kPushes * terms[j]) pressure.columns[j] = 0.0;
  }
}

/// Nothing is sought: the multipliers are then those of the violation.
Pressure pressureOfViolation(Program program) {
  program.curvature.setZero();
  program.cost.setZero();
  Pressure pressure;
  const ScaledProgram scaled(program);
  const ContinuousAnswer answer = leastViolation(scaled, {scaled.lower, scaled.upper});
  pressure.status = answer.status;
  if (answer.status != Status::Optimal) return pressure;
  pressure.x = scaled.toSource(answer.z);
  pressure.rows = answer.rowMultipliers.cwiseQuotient(scaled.rowScale);
  addColumns(pressure, program, Eigen::VectorXd::Zero(program.variableCount()));
  return pressure;
}

Pressure pressureOfObjective(const Program& program) {
  Pressure pressure;
  const Solution solution = solve(program);
  pressure.status = solution.status;
  if (solution.status != Status::Optimal) return pressure;
  if (solution.violation > kNoViolation || solution.multipliers.size() != program.rowCount()) {
    pressure.status = Status::Infeasible;
    return pressure;
  }
  pressure.x = solution.x;
  pressure.rows = solution.multipliers;
  const Eigen::VectorXd gradient =
      2.0 * program.curvature.cwiseProduct(pressure.x - program.centre) + program.cost;
  addColumns(pressure, program, gradient);
  return pressure;
}

std::vector<signed char> signsOf(const Eigen::VectorXd& values, double least) {
  std::vector<signed char> signs(std::size_t(values.size()));
  std::transform(values.begin(), values.end(), signs.begin(), [least](double value) {
    return static_cast<signed char>(value > least ? 1 : value < -least ? -1 : 0);
  });
  return signs;
}

double largest(const Eigen::VectorXd& values) {
  return values.size() > 0 ? values.cwiseAbs().maxCoeff() : 0.0;
}

}  // namespace

Pressure pressureOf(const Program& program, Asked asked) {
  Program plain = program;
  plain.step.setZero();
  plain.choices.clear();
  return asked == Asked::Violation ? pressureOfViolation(plain) : pressureOfObjective(plain);
}

Shape shapeOf(const Pressure& pressure) {
  return {signsOf(pressure.rows, kPushes * largest(pressure.rows)),
          signsOf(pressure.columns, kPushes * largest(pressure.columns))};
}

double reachOfShape(const std::function<Program(double)>& at, Asked asked, const Shape& shape, double most) {
  const auto keeps = [&](double t) {
    const Pressure pressure = pressureOf(at(t), asked);
    return pressure.status == Status::Optimal && shapeOf(pressure) == shape;
  };
  if (keeps(most)) return most;
  double within = 0.0;
  double beyond = most;
  while (std::abs(beyond - within) > kPrecision * std::abs(most)) {
    const double middle = 0.5 * (within + beyond);
    (keeps(middle) ? within : beyond) = middle;
  }
  return within;
}

}  // namespace tarebowl::solver
