// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/measure.h"
#include "core/diet/problem.h"
#include "core/diet/solve.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// Where the lowest cost is sought: foods that the solver may move and that nobody has given a price. Unknown
/// is not free of charge, so that such a problem is not solved.
[[nodiscard]] std::vector<std::size_t> foodsWithoutPrice(const BalanceProblem& problem);

/// What makes a problem one that cannot be solved at all, as a code word and facts ("no-foods", "unit:
/// ca-min"); nothing where it can. Comes before everything else: a problem that passes can be measured and
/// formulated.
[[nodiscard]] std::optional<std::string> unsolvable(const BalanceProblem& problem);
/// The same of what the problem's targets, ratios and shares came to: one that cannot be counted is not left
/// out in silence.
[[nodiscard]] std::optional<std::string> uncountable(std::span<const Measure> measures);

/// Looks at an answer as someone who knows only the problem: are the grams within the limits, on the scale
/// and as the choices want them, does every hard rule hold? The first that does not, as a code word and
/// facts; nothing where all do.
[[nodiscard]] std::optional<std::string> brokenRule(const BalanceProblem& problem,
                                                    const DietSolution& answer);

/// Whether two workings of one number agree to 1e-9, relative to their size or to 1 where they are smaller.
[[nodiscard]] bool agree(double a, double b);

}  // namespace tarebowl::diet
