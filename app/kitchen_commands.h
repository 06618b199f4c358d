// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"

/// The kitchen's day from the terminal. Each throws store::StoreError, exchange::FormatError and UsageError.
namespace tarebowl::app {

/// "tarebowl-prep/1", a table, or a page: NAME.html, with --labels its bowl labels.
[[nodiscard]] int prepare(const Command& command, const Streams& streams);
/// Weights and leftovers from a table. All of it or nothing: where a line is to be asked about, nothing is
/// written until the command says --confirm.
[[nodiscard]] int weighInTable(const Command& command, const Streams& streams);
[[nodiscard]] int takeLeftovers(const Command& command, const Streams& streams);
/// Foods with whether they are in the house; --out and --in change it.
[[nodiscard]] int showStock(const Command& command, const Streams& streams);
/// The rule of weighing of the house, as JSON, after what the command sets of it.
[[nodiscard]] int showTolerance(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
