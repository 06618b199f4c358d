// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// Every command of the terminal, in the order of the help. The one that the line names sets chosen, with
/// what it was told, while the line is parsed; the commands outlive neither app nor chosen.
void defineCommands(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
