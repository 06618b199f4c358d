// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "core/store/group_reading.h"

#include <string>

namespace tarebowl::app {

[[nodiscard]] store::Collection openForReading(const std::string& file);

/// For a command that will write: today's backup is made before, where there is none yet.
[[nodiscard]] store::Collection openForWriting(const std::string& file);

/// The day that the command is about.
[[nodiscard]] quantity::Date dayOf(const Command& command);

/// The group that the command names, on that day. Throws UsageError, with the groups there are.
[[nodiscard]] store::KnownGroup groupOf(const Command& command, const store::Collection& collection);

/// The same with targets. Throws UsageError where it has no profile in force on that day.
[[nodiscard]] store::KnownGroup fedGroupOf(const Command& command, const store::Collection& collection);

}  // namespace tarebowl::app
