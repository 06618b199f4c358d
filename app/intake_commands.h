// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// intake: what a group ate: "tarebowl-intake/1", CSV or a table.
void defineIntake(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
