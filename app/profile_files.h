// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/export_command.h"
#include "app/import_command.h"

/// Target profiles in and out of a collection. Each throws as Run says.
namespace tarebowl::app {

[[nodiscard]] int exportProfile(const ExportWords& words, const Streams& streams);
/// A profile that is new becomes a draft; one whose code is there, the next version of it as a draft.
[[nodiscard]] int importProfile(const ImportWords& words, const Streams& streams);

}  // namespace tarebowl::app
