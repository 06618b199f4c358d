// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/group_reading.h"

#include <string>

namespace tarebowl::app {

/// How a command opens a collection: where a server wants a password that is not at hand, it is asked for at
/// the terminal.
[[nodiscard]] store::OpenOptions openingByHand();

[[nodiscard]] store::Collection openForReading(const std::string& file);

/// For a command that will write: today's backup is made before, where there is none yet.
[[nodiscard]] store::Collection openForWriting(const std::string& file);

/// The group of this code, on that day. Throws UsageError, with the groups there are.
[[nodiscard]] store::KnownGroup groupOf(const store::Collection& collection, const std::string& code,
                                        quantity::Date day);

/// The same with targets. Throws UsageError where it has no profile in force on that day.
[[nodiscard]] store::KnownGroup fedGroupOf(const store::Collection& collection, const std::string& code,
                                           quantity::Date day);

}  // namespace tarebowl::app
