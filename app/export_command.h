// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/options.h"

namespace tarebowl::app {

struct ExportWords {
  std::string collection{};  ///< file
  std::string file{};        ///< what is written
  std::string profile{};     ///< "CODE" or "CODE:VERSION", instead of foods
  DietWords diet{};          ///< instead of foods; version 0: all
  bool asProblem = false;    ///< the problem of a version, not the diet
  bool wide = false;         ///< a row a food
};

/// export: foods as a table, a target profile or a diet.
void defineExport(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
