// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/export_command.h"
#include "app/import_command.h"

/// Diets in and out of a collection. Each throws as Run says.
namespace tarebowl::app {

/// The diet with its versions (tarebowl-diet/1), or the problem of one version.
[[nodiscard]] int exportDiet(const ExportWords& words, const Streams& streams);
/// Whether a file says that it is a tarebowl-diet/1. Throws exchange::FormatError where it is no JSON.
[[nodiscard]] bool isDietFile(const std::string& file);
/// A diet whose code is not there yet.
[[nodiscard]] int importDiet(const ImportWords& words, const Streams& streams);

}  // namespace tarebowl::app
