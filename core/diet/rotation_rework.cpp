// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_rework.h"

#include "core/diet/rotation_exact.h"

namespace tarebowl::diet {

using Eigen::Index;

namespace {

constexpr double kNothing = 1e-9;

/// The rotation in which these cells are open as they were and all others stay as the plan has them.
RotationModel onlyOpen(const RotationModel& model, const solver::RowMatrix& plan, const CellChoice& cells) {
  RotationModel some = model;
  for (Index d = 0; d < model.days; ++d) {
    if (!cells.row(d).any()) some.isOpen[static_cast<std::size_t>(d)] = 0;
    for (Index j = 0; j < model.foods; ++j) {
      if (cells(d, j)) continue;
      const double grams = plan(d, j);
      some.cell(d, j) = {.least = grams, .most = grams, .must = grams > 0.0, .isFixed = true};
    }
  }
  return some;
}

}  // namespace

CellChoice wholeDays(const RotationModel& model, std::span<const Index> days) {
  CellChoice cells = CellChoice::Constant(model.days, model.foods, false);
  for (const Index d : days) cells.row(d) = true;
  return cells;
}

std::optional<solver::RowMatrix> reworked(const RotationModel& model, const solver::RowMatrix& plan,
                                          const CellChoice& cells, const solver::Limits& limits,
                                          std::int64_t& nodes, const solver::RowMatrix* before) {
  RotationModel some = onlyOpen(model, plan, cells);
  if (openCells(some) == 0) return std::nullopt;
  if (before != nullptr) some.nearTo = *before;
  const PlanValue reached = valueOf(some, plan);
  // A plan from before may break rules that are new: then nothing is known of what these cells can reach.
  const bool isKnown = before == nullptr && reached.broken <= kNothing;
  ExactPlan exact = exactPlan(some, limits,
                              {isKnown && reached.period <= kNothing, isKnown && reached.daily <= kNothing,
                               isKnown && reached.wishes <= kNothing});
  nodes += exact.nodes;
  return std::move(exact.grams);
}

}  // namespace tarebowl::diet
