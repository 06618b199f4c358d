// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "app/commands.h"

/// The vet's questions from the terminal. Each throws store::StoreError and UsageError.
namespace tarebowl::app {

/// "tarebowl-calcium/1", a table, or a page: NAME.html.
[[nodiscard]] int reviewCalcium(const Command& command, const Streams& streams);
/// "tarebowl-look-back/1", a table, or a page: NAME.html.
[[nodiscard]] int lookBack(const Command& command, const Streams& streams);
/// Writes one observation down. What is to be asked about is not written until the command says --confirm.
[[nodiscard]] int observe(const Command& command, const Streams& streams);

}  // namespace tarebowl::app
