// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// sheet: a version of a diet as a page, into a file.
void defineSheet(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
