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

/// What is known before anything is asked: there is nothing to miss, or the plan misses none of it. A plan
/// from before may break rules that are new: then nothing is known of what these cells can reach.
NothingMissed nothingMissed(const RotationModel& model, const PlanValue& reached, bool keepsRules) {
  const bool isKnown = keepsRules && reached.broken <= kNothing;
  const bool hasWishes = !model.variety.empty() || !model.useUp.empty();
  return {model.period.rows.rows() == 0 || (isKnown && reached.period <= kNothing),
          model.daily.rows.rows() == 0 || (isKnown && reached.daily <= kNothing),
          !hasWishes || (isKnown && reached.wishes <= kNothing)};
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
  ExactPlan exact =
      exactPlan(some, limits, nothingMissed(some, valueOf(some, plan), before == nullptr), &plan);
  nodes += exact.nodes;
  return std::move(exact.grams);
}

}  // namespace tarebowl::diet
