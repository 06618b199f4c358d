// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// `tarebowl server init|upgrade|add`: a collection that several desks share, on PostgreSQL.
void defineServer(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
