// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"

/// Tables of foods in and out of a collection, and its checks.
namespace tarebowl::app {

/// Throws exchange::FormatError for a table that is refused and store::StoreError.
[[nodiscard]] int importTableFile(const Command& command, const Streams& streams);
[[nodiscard]] int exportFoods(const Command& command, const Streams& streams);
[[nodiscard]] int checkCollection(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
