// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"

#include <optional>

/// Stage 1 of a program (least price times violation) by general solvers of other people. Rows with an
/// infinite price hold exactly; choices and scatter are not offered.
namespace tarebowl::reference {

/// GLPK: dual simplex, then its simplex in rational arithmetic from the basis found. Nothing unless optimal.
[[nodiscard]] std::optional<double> leastViolationByGlpk(const solver::Program& program);

/// Clp: dual simplex with tolerances of 1e-9.
[[nodiscard]] std::optional<double> leastViolationByClp(const solver::Program& program);

/// GLPK's branch and cut over whole numbers of steps; the violation of the rounded grams.
[[nodiscard]] std::optional<double> leastViolationInStepsByGlpk(const solver::Program& program);

}  // namespace tarebowl::reference
