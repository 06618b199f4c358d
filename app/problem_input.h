// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"
#include "core/diet/problem.h"

namespace tarebowl::app {

/// The command's problem file, or standard input for "-"; foods without values come from the command's
/// collection. Throws exchange::FormatError and store::StoreError.
[[nodiscard]] diet::BalanceProblem readProblemFile(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
