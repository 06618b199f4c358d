// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// diets: "tarebowl-diets/1", or a table: every diet with its versions; with a diet, one version of it as it
/// stands ("tarebowl-version/1").
void defineDiets(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
