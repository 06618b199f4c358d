// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// swap: "tarebowl-swap/1", or a table with a line for each swap: what to give instead of the foods that are
/// missing from a diet of a collection or from the approved diet of a problem file. Done where anything will
/// do, impossible where nothing will.
void defineSwap(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
