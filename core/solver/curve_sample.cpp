// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/curve_sample.h"

#include "core/solver/chance.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace tarebowl::solver {
namespace {

constexpr double kAtBound = 1e-9;      // of what counts as much
constexpr double kAtBoundSure = 1e-7;  // with scatter, whose answers are good to 1e-9 of their rows

signed char standingOf(double value, double lower, double upper, double near) {
  if (value < lower - near) return -2;
  if (value > upper + near) return 2;
  if (value <= lower + near) return -1;
  return value >= upper - near ? 1 : 0;
}

Standing standingOf(const Program& program, const Eigen::VectorXd& x) {
  const bool scatters = hasScatter(program);
  const double near = scatters ? kAtBoundSure : kAtBound;
  Standing standing;
  for (Eigen::Index i = 0; i < program.rowCount(); ++i) {
    const double spread = scatters ? (program.scatter->row(i).transpose().cwiseProduct(x)).norm() : 0.0;
    const double activity = program.rows.row(i).dot(x);
    const double size = 1.0 + program.rows.row(i).cwiseAbs().dot(x.cwiseAbs());
    const double toLower = activity - spread - program.rowLower[i];
    const double toUpper = activity + spread - program.rowUpper[i];
    standing.push_back(standingOf(toLower, 0.0, kInfinity, near * size));
    standing.push_back(standingOf(toUpper, -kInfinity, 0.0, near * size));
  }
  const double grams = near * std::max(x.cwiseAbs().sum(), kNothing);
  for (Eigen::Index j = 0; j < x.size(); ++j)
    standing.push_back(standingOf(x[j], program.lower[j], program.upper[j], grams));
  return standing;
}

template <class Solver>
CurveSample solvedBy(const Program& program) {
  Solver solver(ContinuousProgram::of(program));
  CurveSample sample;
  sample.status = solver.solve(Solver::Budget::Exact);
  sample.reason = std::string(solver.reason());
  sample.point.x = solver.x();
  return sample;
}

/// Spends no budget where it can be helped; what is scaled badly is left to the solver that scales.
CurveSample solved(const Program& program) {
  if (!hasScatter(program)) {
    CurveSample sample =
        isQuadratic(program) ? solvedBy<ContinuousSolver>(program) : solvedBy<LinearSolver>(program);
    if (sample.status != Status::Failed) return sample;
  }
  Solution solution = solve(program);
  CurveSample sample;
  sample.status = solution.status;
  sample.reason = std::move(solution.reason);
  sample.point.x = std::move(solution.x);
  return sample;
}

}  // namespace

bool isQuadratic(const Program& program) {
  return (program.curvature.array() > 0.0).all();
}

Program withoutTies(Program program) {
  if (isQuadratic(program)) return program;
  constexpr double kTie = 1e-8;
  constexpr double kGolden = 0.6180339887498949;
  const double size = program.cost.size() > 0 ? program.cost.cwiseAbs().maxCoeff() : 0.0;
  for (Eigen::Index j = 0; j < program.cost.size(); ++j) {
    const double place = kGolden * static_cast<double>(j + 1);
    program.cost[j] += kTie * (size > 0.0 ? size : 1.0) * (1.0 + place - std::floor(place));
  }
  return program;
}

CurveSample sampleOf(const Program& program, double at) {
  CurveSample sample = solved(withoutTies(program));
  sample.point.at = at;
  if (!sample.exists()) return sample;
  sample.point.violation = elasticViolation(program, sample.point.x);
  sample.point.objective = objectiveValue(program, sample.point.x);
  sample.standing = standingOf(program, sample.point.x);
  return sample;
}

}  // namespace tarebowl::solver
