// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
}

namespace tarebowl::app {

/// weigh-in and leftovers: from a table, all of it or nothing. Where a weight is to be asked about, nothing
/// is written without --confirm.
void defineWeighIn(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
