// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"
#include "core/diet/from_profile.h"

/// The commands of the animals of a collection. Each throws store::StoreError and UsageError.
namespace tarebowl::app {

/// "tarebowl-animals/1", or a table: every group, or one with its animals and its energy need.
[[nodiscard]] int listAnimals(const Command& command, const Streams& streams);
/// "tarebowl-targets/1", or a table.
[[nodiscard]] int listTargets(const Command& command, const Streams& streams);
/// The problem of the command's group with the command's foods, and the rules that it cannot hold.
[[nodiscard]] diet::ProblemOfProfile groupProblemOf(const Command& command);

[[nodiscard]] int exportProfile(const Command& command, const Streams& streams);
/// A profile that is new becomes a draft; one whose code is there, the next version of it as a draft.
[[nodiscard]] int importProfile(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
