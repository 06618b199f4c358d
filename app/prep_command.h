// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// prep: "tarebowl-prep/1", a table, or a page: NAME.html, with --labels its bowl labels.
void definePrep(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
