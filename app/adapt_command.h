// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// adapt: a food of a kept rotation goes to another day, or to other grams; no more turns with it than rules
/// and zones ask for. Or a cell of it is locked as it is, or free again.
void defineAdapt(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
