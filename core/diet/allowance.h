// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/diet/problem.h"

namespace tarebowl::diet {

/// What is given unweighed as a food of the balance problem: the middle of its range, which the solver cannot
/// move, and the range as scatter of every nutrient that it brings. Any amount in the range is taken to be as
/// likely as any other, so that its standard deviation is (high - low) / sqrt(12); it joins the food's own:
///   sd^2 = sd_food^2 + (content * sd_amount / middle)^2, per 100 g.
/// The food's id gets the allowance's purpose appended, so that the same food may stand in the bowl as well.
[[nodiscard]] DietFood asFood(const Allowance& allowance, const DietFood& food);

}  // namespace tarebowl::diet
