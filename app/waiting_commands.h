// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// tarebowl server waiting, send, settle: what a desk wrote down while its server was away.
void defineWaiting(CLI::App& server, Run& chosen);

}  // namespace tarebowl::app
