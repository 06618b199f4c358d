// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

/// Random balance problems for RapidCheck: call these inside a property.
namespace tarebowl::diet::testing {

/// One to six foods with unknown values here and there, targets on every basis, ratios, shares, sometimes a
/// confidence.
[[nodiscard]] BalanceProblem drawProblem();
/// The same with bounds that some bowl of these foods comes near to, as a person would set them: what a
/// solver is for. Rules that no bowl gives a value for are left out.
[[nodiscard]] BalanceProblem drawSensibleProblem();
/// One amount per food, some of them 0.
[[nodiscard]] Diet drawDiet(const BalanceProblem& problem);

}  // namespace tarebowl::diet::testing
