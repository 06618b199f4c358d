// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"

#include <string>

namespace tarebowl::app {

/// The answer for people: what it is and why, grams per food, how each target stands.
[[nodiscard]] std::string solutionTable(const diet::BalanceProblem& problem,
                                        const diet::DietSolution& solution,
                                        const exchange::Reasons& reasons = {});

/// The same of a diet that was judged and not sought.
[[nodiscard]] std::string judgementTable(const diet::BalanceProblem& problem,
                                         const diet::DietSolution& judged);

/// Whom a problem is for, above whatever is shown of it.
[[nodiscard]] std::string problemHeading(const diet::BalanceProblem& problem);
/// How each target stands, a line each.
[[nodiscard]] std::string ladderTable(const diet::BalanceProblem& problem, const diet::Balance& balance);

/// The known nutrients, by group.
[[nodiscard]] std::string nutrientTable();

}  // namespace tarebowl::app
