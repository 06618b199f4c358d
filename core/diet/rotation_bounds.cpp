// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_bounds.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

void readFoods(const RotationModel& model, const RotationProgram& asked, const Eigen::VectorXd& x,
               RotationBound& bound) {
  bound.grams = bound.days = Eigen::VectorXd::Zero(model.foods);
  for (Index j = 0; j < model.foods; ++j) {
    bool isCounted = false;
    for (Index t = 0; t < asked.gramsColumn.rows(); ++t) {
      if (asked.gramsColumn(t, j) >= 0.0) bound.grams[j] += x[static_cast<Index>(asked.gramsColumn(t, j))];
      if (asked.daysColumn(t, j) < 0.0) continue;
      isCounted = true;
      bound.days[j] += x[static_cast<Index>(asked.daysColumn(t, j))];
    }
    if (!isCounted && bound.grams[j] > 0.0) bound.days[j] = static_cast<double>(model.days);
    for (Index d = 0; d < model.days; ++d) {
      const RotationCell& cell = model.cell(d, j);
      if (isCounted && cell.isFixed && cell.least > 0.0) bound.days[j] += 1.0;
    }
  }
}

RotationBound answer(const RotationModel& model, const RotationProgram& asked,
                     const solver::Solution& solution) {
  RotationBound bound;
  if (solution.status == solver::Status::Infeasible) bound.isImpossible = true;
  if (solution.status != solver::Status::Optimal) return bound;
  const double value = asked.isViolation ? solution.violation : solution.objective;
  bound.value = asked.valueOf(solution.violation, solution.objective) - solution.gap * std::abs(value);
  readFoods(model, asked, solution.x, bound);
  return bound;
}

/// Everything is settled: what there is, is the bound.
bool isEmpty(const RotationProgram& asked) {
  return asked.program.variableCount() == 0;
}

}  // namespace

RotationBound relaxedBound(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                           const RotationBudgets& budgets, WithDailyZones daily) {
  RotationProgram asked = rotationProgram(model, std::move(blocks), stage, budgets, daily);
  if (isEmpty(asked)) return {};
  asked.program.step.setZero();
  return answer(model, asked, solver::solve(asked.program));
}

RotationBound wholeBound(const RotationModel& model, DayBlocks blocks, RotationStage stage,
                         const RotationBudgets& budgets, const solver::Limits& limits, std::int64_t& nodes) {
  const RotationProgram asked =
      rotationProgram(model, std::move(blocks), stage, budgets, WithDailyZones::Yes);
  if (isEmpty(asked)) return {};
  const solver::Solution solution = solver::solve(asked.program, limits);
  nodes += solution.nodes;
  return answer(model, asked, solution);
}

}  // namespace tarebowl::diet
