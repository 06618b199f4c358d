// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"

/// A second reading of the problem format, in plain loops over the foods, that shares nothing with the
/// balance but the food's own values and the energy methods. Slow and plain on purpose: it is what the
/// balance is compared with.
namespace tarebowl::diet::testing {

[[nodiscard]] Diet literalReference(const BalanceProblem& problem);

/// value, coverage, sd and shortfall of every target, ratio and share; the other fields are left alone.
[[nodiscard]] Balance literalBalance(const BalanceProblem& problem, const Diet& diet);

}  // namespace tarebowl::diet::testing
