// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"

namespace tarebowl::app {

/// What a group ate: "tarebowl-intake/1", CSV or a table. Throws store::StoreError and UsageError.
[[nodiscard]] int showIntake(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
