// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// lots: "tarebowl-lots/1", or a table, of the lots that foods are fed from; with --food and --lot it begins
/// one first.
void defineLots(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
