// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// animals: "tarebowl-animals/1", or a table: every group, or one with its animals and its energy need.
void defineAnimals(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
