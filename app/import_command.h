// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

#include <string>

namespace tarebowl::app {

struct ImportWords {
  std::string collection{};  ///< file
  std::string file{};        ///< what is imported: CSV, XLSX, or a profile or a diet as JSON
  std::string mapping{};     ///< how a table is read; empty: guessed
  bool dryRun = false;       ///< say what would happen, and do not do it
  bool table = false;        ///< for people rather than for programs
};

/// import: a table of foods, a target profile or a diet; all of it or nothing.
void defineImport(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
