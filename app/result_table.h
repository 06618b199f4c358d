// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/diet/solve.h"
#include "core/exchange/problem_json.h"

#include <string>
#include <string_view>

namespace tarebowl::app {

/// What every table ends with.
inline constexpr std::string_view kCaution =
    "Tarebowl supports, and does not replace, a qualified nutritionist and a licensed vet; local rules on "
    "feeding,\n"
    "hygiene, live prey and medicines come first. Published requirements of a model species are a starting "
    "point.\n";

/// The answer for people: what it is and why, grams per food, how each target stands.
[[nodiscard]] std::string solutionTable(const diet::BalanceProblem& problem,
                                        const diet::DietSolution& solution,
                                        const exchange::Reasons& reasons = {});

/// The same of a diet that was judged and not sought.
[[nodiscard]] std::string judgementTable(const diet::BalanceProblem& problem,
                                         const diet::DietSolution& judged);

/// The known nutrients, by group.
[[nodiscard]] std::string nutrientTable();

}  // namespace tarebowl::app
