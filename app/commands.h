// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// Every command of the terminal, in the order of the help. While app parses a line, the command that it
/// names sets chosen, which must live as long as app.
void defineCommands(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
