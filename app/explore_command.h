// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/commands.h"
#include "core/diet/problem.h"

namespace tarebowl::app {

/// How the answer changes while a bound of a target, or a limit of a food, moves, or what is sought is traded
/// for something else. Throws UsageError where the problem has no such bound.
[[nodiscard]] int explore(const Command& command, const diet::BalanceProblem& problem,
                          const Streams& streams);

}  // namespace tarebowl::app
