// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/rotation_wanted.h"

#include "core/diet/rotation_bounds.h"

#include <algorithm>

namespace tarebowl::diet {
namespace {

double budget(const RotationBound& bound) {
  return std::max(0.0, bound.value) * (1.0 + kBudgetRounding);
}

}  // namespace

std::optional<Eigen::VectorXd> wantedDays(const RotationModel& model) {
  const RotationBound period =
      relaxedBound(model, alikeTogether(model), RotationStage::Period, {0.0, 0.0, 0.0}, WithDailyZones::Yes);
  if (period.isImpossible) return std::nullopt;
  RotationBudgets budgets{budget(period), 0.0, 0.0};
  const DayBlocks together = allTogether(model);
  if (!model.variety.empty() || !model.useUp.empty())
    budgets[2] = budget(relaxedBound(model, together, RotationStage::Wishes, budgets, WithDailyZones::No));
  const RotationBound best =
      relaxedBound(model, together, RotationStage::Objective, budgets, WithDailyZones::No);
  if (best.days.size() > 0) return best.days;
  return period.days.size() > 0 ? period.days : Eigen::VectorXd::Zero(model.foods);
}

}  // namespace tarebowl::diet
