// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/dense_quadratic.h"

#include <Eigen/Cholesky>
#include <cmath>
#include <stdexcept>

namespace tarebowl::reference {

namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;
using solver::kInfinity;

/// Rows of x and, where a variable has limits, a row for it.
DenseQuadratic withLimitsAsRows(const DenseQuadratic& from) {
  DenseQuadratic to = from;
  const Index n = from.gradient.size();
  const Index m = from.rows.rows();
  to.rows.conservativeResize(m + n, n);
  to.rows.bottomRows(n).setIdentity();
  to.rowLower.conservativeResize(m + n);
  to.rowUpper.conservativeResize(m + n);
  to.rowLower.tail(n) = from.lower;
  to.rowUpper.tail(n) = from.upper;
  return to;
}

void addSquaresOfEquations(DenseQuadratic& program) {
  for (Index i = 0; i < program.rows.rows(); ++i) {
    if (program.rowLower[i] != program.rowUpper[i]) continue;
    program.addSquare(program.rows.row(i).transpose(), program.rowLower[i]);
  }
}

}  // namespace

DenseQuadratic::DenseQuadratic(Index variables, Index rowCount)
    : hessian(MatrixXd::Zero(variables, variables)),
      gradient(VectorXd::Zero(variables)),
      rows(solver::RowMatrix::Zero(rowCount, variables)),
      rowLower(VectorXd::Constant(rowCount, -kInfinity)),
      rowUpper(VectorXd::Constant(rowCount, kInfinity)),
      lower(VectorXd::Zero(variables)),
      upper(VectorXd::Constant(variables, kInfinity)) {}

void DenseQuadratic::addSquare(const VectorXd& form, double target) {
  hessian += 2.0 * form * form.transpose();
  gradient -= 2.0 * target * form;
  constant += target * target;
}

void DenseQuadratic::setEqual(Index row, const VectorXd& form, double value) {
  rows.row(row) = form.transpose();
  rowLower[row] = rowUpper[row] = value;
}

double DenseQuadratic::value(const VectorXd& x) const {
  return 0.5 * x.dot(hessian * x) + gradient.dot(x) + constant;
}

DenseAnswer solveBySubstitution(const DenseQuadratic& program, double shift) {
  DenseQuadratic whole = withLimitsAsRows(program);
  addSquaresOfEquations(whole);
  const Index n = program.gradient.size();
  const Eigen::LLT<MatrixXd> factor(whole.hessian);
  const MatrixXd triangle = factor.matrixL();
  if (factor.info() != Eigen::Success || triangle.diagonal().minCoeff() < 1e-7)
    throw std::invalid_argument("the objective is flat in some direction");
  const auto toX = [&](const VectorXd& v) {
    return VectorXd(
        triangle.transpose().triangularView<Eigen::Upper>().solve(v - VectorXd::Constant(n, shift)));
  };
  solver::Program own;
  own.rows = triangle.triangularView<Eigen::Lower>().solve(MatrixXd(whole.rows.transpose())).transpose();
  const VectorXd moved = own.rows * VectorXd::Constant(n, shift);
  own.rowLower = whole.rowLower + moved;
  own.rowUpper = whole.rowUpper + moved;
  own.price = VectorXd::Constant(own.rows.rows(), kInfinity);
  own.lower = own.step = own.cost = VectorXd::Zero(n);
  own.upper = VectorXd::Constant(n, 2.0 * shift);
  own.curvature = VectorXd::Constant(n, 0.5);
  own.centre = VectorXd::Constant(n, shift) - triangle.triangularView<Eigen::Lower>().solve(whole.gradient);
  const solver::Solution solution = solver::solve(own);
  if (solution.status != solver::Status::Optimal) return {solution.status, solution.reason, {}, 0.0};
  if (!(solution.x.minCoeff() > 0.0 && solution.x.maxCoeff() < 2.0 * shift))
    throw std::invalid_argument("the shift is too small");
  const VectorXd x = toX(solution.x);
  return {solution.status, {}, x, program.value(x)};
}

DenseAnswer solveByProximalPoints(const DenseQuadratic& program, double shift) {
  const Index n = program.gradient.size();
  DenseAnswer answer{solver::Status::Failed, "the points did not stand still", VectorXd::Zero(n), 0.0};
  for (int step = 0; step < 200; ++step) {
    DenseQuadratic near = program;
    for (Index j = 0; j < n; ++j) near.addSquare(VectorXd::Unit(n, j), answer.x[j]);
    DenseAnswer next = solveBySubstitution(near, shift);
    if (next.status != solver::Status::Optimal) return next;
    const double moved = (next.x - answer.x).cwiseAbs().maxCoeff();
    answer.x = next.x;
    answer.value = program.value(next.x);
    if (moved > 1e-10) continue;
    answer.status = solver::Status::Optimal;
    break;
  }
  return answer;
}

}  // namespace tarebowl::reference
