// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"

#include <string>

namespace tarebowl::app {

/// Why an answer is as it is, in sentences, a line each: what is missed and which rules fight, by how little
/// they would have to give way, which foods on hand would close the gap, and what the bounds that push cost.
/// Says no more than was proved. Empty where there is nothing to say.
[[nodiscard]] std::string whyText(const diet::BalanceProblem& problem, const diet::DietSolution& solution,
                                  const exchange::Reasons& reasons);

}  // namespace tarebowl::app
