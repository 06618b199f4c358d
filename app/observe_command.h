// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// observe: writes one observation down. What is to be asked about is not written without --confirm.
void defineObserve(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
