// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// targets: "tarebowl-targets/1", or a table, of a group.
void defineTargets(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
