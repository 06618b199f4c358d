// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/endless_gain.h"

#include "core/solver/linear_solver.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kGain = 1e-6;  // of the largest cost: less is rounding, and no gain is claimed

double bareBound(double bound) {
  return std::isfinite(bound) ? 0.0 : bound;
}

}  // namespace

bool gainsWithoutEnd(const Program& program) {
  if ((program.curvature.array() > 0).any()) return false;
  Program mix = program;
  mix.rowLower = program.rowLower.unaryExpr(&bareBound);
  mix.rowUpper = program.rowUpper.unaryExpr(&bareBound);
  mix.price.setConstant(kInfinity);
  mix.lower.setZero();
  mix.upper = program.upper.unaryExpr([](double upper) { return upper < kInfinity ? 0.0 : 1.0; });
  LinearSolver solver(ContinuousProgram::of(mix));
  const double largest = program.cost.size() > 0 ? program.cost.cwiseAbs().maxCoeff() : 0.0;
  return solver.solve() == Status::Optimal && solver.objective() < -kGain * largest;
}

}  // namespace tarebowl::solver
