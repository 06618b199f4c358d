// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// rotate: a plan for days of a problem ("tarebowl-rotation/1", or a table).
void defineRotate(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
