// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// tolerance: the rule of weighing of the house, as JSON, after what is set of it.
void defineTolerance(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
