// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// pans: "tarebowl-pans/1", or a table, of the control pans of some days; or takes a table of them in, all of
/// it or, where a pan is to be asked about and the command does not say --confirm, nothing.
void definePans(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
