// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_exact.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

solver::RowMatrix planFrom(const RotationModel& model, const RotationProgram& asked,
                           const Eigen::VectorXd& x) {
  solver::RowMatrix plan = solver::RowMatrix::Zero(model.days, model.foods);
  for (Index d = 0; d < model.days; ++d)
    for (Index j = 0; j < model.foods; ++j)
      if (model.cell(d, j).isFixed) plan(d, j) = model.cell(d, j).least;
  for (Index t = 0; t < asked.gramsColumn.rows(); ++t) {
    const Index day = asked.blocks[static_cast<std::size_t>(t)].front();
    for (Index j = 0; j < model.foods; ++j) {
      if (asked.gramsColumn(t, j) < 0.0) continue;
      constexpr double kTrace = 1e-9;
      const double grams = x[static_cast<Index>(asked.gramsColumn(t, j))];
      const double step = model.step[j];
      plan(day, j) = step > 0.0 ? std::round(grams / step) * step : grams < kTrace ? 0.0 : grams;
    }
  }
  return plan;
}

/// The plan in the program's columns; whatever else these hold stays nothing.
Eigen::VectorXd pointOf(const RotationProgram& asked, const solver::RowMatrix& plan) {
  Eigen::VectorXd x = Eigen::VectorXd::Zero(asked.program.variableCount());
  for (Index t = 0; t < asked.gramsColumn.rows(); ++t) {
    const Index day = asked.blocks[static_cast<std::size_t>(t)].front();
    for (Index j = 0; j < plan.cols(); ++j) {
      if (asked.gramsColumn(t, j) >= 0.0) x[static_cast<Index>(asked.gramsColumn(t, j))] = plan(day, j);
      if (asked.daysColumn(t, j) >= 0.0)
        x[static_cast<Index>(asked.daysColumn(t, j))] = plan(day, j) > 0.0 ? 1.0 : 0.0;
    }
  }
  return x;
}

}  // namespace

Index openCells(const RotationModel& model) {
  return std::ranges::count_if(model.cells,
                               [](const RotationCell& cell) { return !cell.isFixed && cell.most > 0.0; });
}

ExactPlan exactPlan(const RotationModel& model, const solver::Limits& limits, const NothingMissed& known,
                    const solver::RowMatrix* plan) {
  ExactPlan exact;
  RotationBudgets budgets{0.0, 0.0, 0.0};
  for (const RotationStage stage : kRotationStages) {
    if (stage < RotationStage::Objective && known[static_cast<std::size_t>(stage)]) continue;
    const RotationProgram asked =
        rotationProgram(model, eachAlone(model), stage, budgets, WithDailyZones::Yes);
    if (asked.program.variableCount() == 0) return exact;
    const bool isFromPlan = plan != nullptr && stage == RotationStage::Objective;
    const solver::Solution solution = isFromPlan ? solver::solve(asked.program, limits, pointOf(asked, *plan))
                                                 : solver::solve(asked.program, limits);
    exact.nodes += solution.nodes;
    if (solution.status != solver::Status::Optimal) {
      exact.isImpossible = stage == RotationStage::Period && solution.status == solver::Status::Infeasible;
      return exact;
    }
    exact.grams = planFrom(model, asked, solution.x);
    const double value = asked.valueOf(solution.violation, solution.objective);
    const double own = asked.isViolation ? solution.violation : solution.objective;
    exact.bound[static_cast<std::size_t>(stage)] = value - solution.gap * std::abs(own);
    if (stage < RotationStage::Objective) {
      constexpr double kRounding = 1e-9;
      budgets[static_cast<std::size_t>(stage)] = value * (1.0 + kRounding);
    }
  }
  exact.isComplete = true;
  return exact;
}

}  // namespace tarebowl::diet
