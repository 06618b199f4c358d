// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// "zoo-intake": what every group ate of some nutrients, side by side.
void defineZooIntake(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
