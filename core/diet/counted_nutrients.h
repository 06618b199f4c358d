// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <vector>

namespace tarebowl::diet {

/// What a problem counts of each food: the nutrients of its targets, ratios and objective, and what dry
/// matter and energy are worked out from. Each once, in order. A food that is known no further counts the
/// same.
[[nodiscard]] std::vector<food::NutrientId> countedNutrients(const BalanceProblem& problem);

}  // namespace tarebowl::diet
