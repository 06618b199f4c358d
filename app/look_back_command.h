// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// look-back: "tarebowl-look-back/1", a table, or a page: NAME.html.
void defineLookBack(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
