// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"
#include "core/diet/problem.h"

/// The commands of the diets of a collection. Each throws store::StoreError and UsageError.
namespace tarebowl::app {

/// "tarebowl-diets/1", or a table: every diet with its versions; with a diet, one version of it as it stands
/// ("tarebowl-version/1").
[[nodiscard]] int showDiets(const Command& command, const Streams& streams);
/// "tarebowl-comparison/1", or sentences.
[[nodiscard]] int compareVersions(const Command& command, const Streams& streams);
[[nodiscard]] int writeSheet(const Command& command, const Streams& streams);

/// The diet with its versions (tarebowl-diet/1), or the problem of one version.
[[nodiscard]] int exportDiet(const Command& command, const Streams& streams);
/// Whether a file says that it is a tarebowl-diet/1. Throws exchange::FormatError where it is no JSON.
[[nodiscard]] bool isDietFile(const std::string& file);
/// A diet whose code is not there yet.
[[nodiscard]] int importDiet(const Command& command, const Streams& streams);

/// The problem that the design desk solves for the command's version, locked foods held; what has happened
/// since it was written is told beside it.
[[nodiscard]] diet::BalanceProblem dietProblemOf(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
