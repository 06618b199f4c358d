// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"
#include "core/transfer/desk_diet.h"

#include <iosfwd>
#include <vector>

namespace tarebowl::app {

/// The versions of the command's diet. Throws UsageError where there is no such diet.
[[nodiscard]] std::vector<store::StoredVersion> versionsOf(const Command& command,
                                                           const store::Collection& collection);

/// One version of the command's diet on the command's day; 0: the newest. Throws UsageError where it is not
/// there.
[[nodiscard]] transfer::DeskDiet deskOf(const Command& command, const store::Collection& collection,
                                        int number);

/// What a person must know before trusting the numbers, a line each.
void tellNotices(const transfer::DeskDiet& desk, std::ostream& out);

}  // namespace tarebowl::app
