// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// intake: what a group ate: "tarebowl-intake/1", CSV or a table.
void defineIntake(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
