// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"
#include "core/diet/problem.h"

namespace tarebowl::app {

/// A plan for days of this problem ("tarebowl-rotation/1", or a table). Throws exchange::FormatError,
/// store::StoreError and UsageError.
[[nodiscard]] int rotateDays(const Command& command, diet::BalanceProblem base, const Streams& streams);

}  // namespace tarebowl::app
