// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_rework.h"

#include "core/diet/rotation_exact.h"

#include <algorithm>

namespace tarebowl::diet {

using Eigen::Index;

namespace {

constexpr double kNothing = 1e-9;

/// The mean day is nearest to what it was where these days are: those that are closed do not move it.
void seekNearest(RotationModel& some, const solver::RowMatrix& plan, const solver::RowMatrix& before,
                 std::span<const Index> days) {
  solver::RowMatrix was = plan;
  for (const Index d : days) was.row(d) = before.row(d);
  some.isDistance = true;
  some.isNegated = false;
  some.centre = was.colwise().sum().transpose() / static_cast<double>(some.days);
}

}  // namespace

RotationModel onlyDaysOpen(const RotationModel& model, const solver::RowMatrix& plan,
                           std::span<const Index> days) {
  RotationModel some = model;
  for (Index d = 0; d < model.days; ++d) {
    if (std::ranges::find(days, d) != days.end()) continue;
    some.isOpen[static_cast<std::size_t>(d)] = 0;
    for (Index j = 0; j < model.foods; ++j) {
      const double grams = plan(d, j);
      some.cell(d, j) = {.least = grams, .most = grams, .must = grams > 0.0, .isFixed = true};
    }
  }
  return some;
}

std::optional<solver::RowMatrix> reworked(const RotationModel& model, const solver::RowMatrix& plan,
                                          std::span<const Index> days, const solver::Limits& limits,
                                          std::int64_t& nodes, const solver::RowMatrix* before) {
  RotationModel some = onlyDaysOpen(model, plan, days);
  if (openCells(some) == 0) return std::nullopt;
  if (before != nullptr) seekNearest(some, plan, *before, days);
  const PlanValue reached = valueOf(some, plan);
  // A plan from before may break rules that are new: then nothing is known of what these days can reach.
  const bool isKnown = before == nullptr && reached.broken <= kNothing;
  ExactPlan exact = exactPlan(some, limits,
                              {isKnown && reached.period <= kNothing, isKnown && reached.daily <= kNothing,
                               isKnown && reached.wishes <= kNothing});
  nodes += exact.nodes;
  return std::move(exact.grams);
}

}  // namespace tarebowl::diet
