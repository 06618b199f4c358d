// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// new; foods: "tarebowl-foods/1", or a table.
void defineCollections(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
