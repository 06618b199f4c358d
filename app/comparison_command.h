// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// compare: "tarebowl-comparison/1", or sentences, on two versions of a diet.
void defineCompare(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
