// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

namespace tarebowl::app {

/// check: doubts about the foods of a collection, as JSON or as sentences.
void defineCheck(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
