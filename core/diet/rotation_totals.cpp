// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_totals.h"

#include "core/diet/rotation_moves.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tarebowl::diet {
namespace {

using Eigen::Index;

std::size_t at(Index i) {
  return static_cast<std::size_t>(i);
}

/// Days together, parted where stock is to be used up.
DayBlocks partedByStock(const RotationModel& model) {
  std::set<Index> ends;
  for (const RotationModel::UseUp& stock : model.useUp) ends.insert(stock.by);
  DayBlocks blocks;
  bool isNew = true;
  for (Index d = 0; d < model.days; ++d) {
    if (model.isOpen[at(d)]) {
      if (isNew) blocks.emplace_back();
      isNew = false;
      blocks.back().push_back(d);
    }
    if (ends.contains(d)) isNew = true;
  }
  return blocks;
}

/// So much for each day between its least and most, as even as can be, in whole steps; what is left over goes
/// to the first that have room.
void layOut(const RotationModel& model, const std::vector<Index>& days, Index food, double grams,
            solver::RowMatrix& plan) {
  std::vector<Index> free;
  for (const Index d : days)
    if (!model.cell(d, food).isFixed && model.cell(d, food).most > 0.0) free.push_back(d);
  if (free.empty()) return;
  const double step = model.step[food];
  double left = grams;
  for (const Index d : free) {
    plan(d, food) = model.cell(d, food).must ? model.cell(d, food).least : 0.0;
    left -= plan(d, food);
  }
  for (std::size_t i = 0; i < free.size(); ++i) {
    const double room = model.cell(free[i], food).most - plan(free[i], food);
    double more = std::clamp(left / static_cast<double>(free.size() - i), 0.0, room);
    if (step > 0.0) more = std::floor(more / step + 1e-6) * step;
    plan(free[i], food) += more;
    left -= more;
  }
  for (const Index d : free) {
    const double room = model.cell(d, food).most - plan(d, food);
    double more = std::clamp(left, 0.0, room);
    if (step > 0.0) more = std::round(more / step) * step;
    plan(d, food) += more;
    left -= more;
  }
}

}  // namespace

RotationModel restrictedTo(const RotationModel& model, const FedPattern& pattern) {
  RotationModel restricted = model;
  for (Index j = 0; j < model.foods; ++j) {
    if (!daysMatter(model, j)) continue;
    for (Index d = 0; d < model.days; ++d) {
      RotationCell& cell = restricted.cell(d, j);
      if (cell.isFixed) continue;
      if (pattern(d, j))
        cell.must = true;
      else
        cell.most = 0.0;
    }
  }
  for (auto& counts : restricted.dayCounts) counts.clear();
  restricted.longestRun.assign(at(model.foods), static_cast<int>(model.days));
  restricted.leastDays.assign(at(model.foods), 0);
  restricted.mostDays.assign(at(model.foods), static_cast<int>(model.days));
  restricted.variety.clear();
  restricted.varietyMembers.clear();
  return restricted;
}

std::optional<Totals> bestTotals(const RotationModel& restricted, Amounts amounts,
                                 const solver::Limits& limits) {
  Totals totals;
  totals.blocks = partedByStock(restricted);
  RotationBudgets budgets{0.0, 0.0, 0.0};
  for (const RotationStage stage : kRotationStages) {
    if (stage == RotationStage::Daily) continue;
    if (stage == RotationStage::Wishes && restricted.useUp.empty()) continue;
    RotationProgram asked = rotationProgram(restricted, totals.blocks, stage, budgets, WithDailyZones::No);
    if (asked.program.variableCount() == 0) {
      totals.grams = solver::RowMatrix::Zero(asked.gramsColumn.rows(), restricted.foods);
      return totals;
    }
    if (amounts == Amounts::Any) asked.program.step.setZero();
    const solver::Solution solution = solver::solve(asked.program, limits);
    totals.nodes += solution.nodes;
    if (solution.status != solver::Status::Optimal) return std::nullopt;
    const double value = asked.valueOf(solution.violation, solution.objective);
    if (stage == RotationStage::Period) totals.period = value;
    if (stage == RotationStage::Objective) totals.objective = value;
    if (stage < RotationStage::Objective) budgets[static_cast<std::size_t>(stage)] = value * (1.0 + 1e-9);
    totals.grams = solver::RowMatrix::Zero(asked.gramsColumn.rows(), restricted.foods);
    for (Index t = 0; t < totals.grams.rows(); ++t)
      for (Index j = 0; j < restricted.foods; ++j)
        if (asked.gramsColumn(t, j) >= 0.0)
          totals.grams(t, j) = solution.x[static_cast<Index>(asked.gramsColumn(t, j))];
  }
  return totals;
}

solver::RowMatrix laidOut(const RotationModel& restricted, const Totals& totals) {
  solver::RowMatrix plan = solver::RowMatrix::Zero(restricted.days, restricted.foods);
  for (Index d = 0; d < restricted.days; ++d)
    for (Index j = 0; j < restricted.foods; ++j)
      if (restricted.cell(d, j).isFixed) plan(d, j) = restricted.cell(d, j).least;
  for (Index t = 0; t < totals.grams.rows(); ++t)
    for (Index j = 0; j < restricted.foods; ++j)
      layOut(restricted, totals.blocks[at(t)], j, totals.grams(t, j), plan);
  PlanMoves moves(restricted, plan);
  moves.shiftBetweenDays();
  return moves.grams();
}

}  // namespace tarebowl::diet
