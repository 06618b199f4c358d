// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// tolerance: the rule of weighing of the house, as JSON, after what is set of it.
void defineTolerance(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
