// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// `tarebowl move`: a collection from a file to a server, and back.
void defineMove(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
