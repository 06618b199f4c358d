// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// salvage COLLECTION NEW: what can still be read of a damaged collection, into a new one.
void defineSalvage(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
