// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// compare: "tarebowl-comparison/1", or sentences, on two versions of a diet.
void defineCompare(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
