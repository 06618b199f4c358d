// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// weigh-in and leftovers: from a table, all of it or nothing. Where a weight is to be asked about, nothing
/// is written without --confirm.
void defineWeighIn(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
