// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// stock: "tarebowl-stock/1", or a table: foods with whether they are in the house; --out and --in change it.
void defineStock(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
