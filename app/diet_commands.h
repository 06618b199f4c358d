// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// diets: "tarebowl-diets/1", or a table: every diet with its versions; with a diet, one version of it as it
/// stands ("tarebowl-version/1").
void defineDiets(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
