// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// balance: "tarebowl-result/1", or a table, of the diet that a problem file states, without a solve.
void defineBalance(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
