// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// explore: how the answer changes while a bound of a target, or a limit of a food, moves, or what is sought
/// is traded for something else.
void defineExplore(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
