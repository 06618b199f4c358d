// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/options.h"
#include "core/transfer/desk_diet.h"

#include <iosfwd>
#include <string>
#include <vector>

namespace tarebowl::app {

/// Throws UsageError where there is no such diet.
[[nodiscard]] std::vector<store::StoredVersion> versionsOf(const store::Collection& collection,
                                                           const std::string& diet);

/// One version of a diet on a day, where none is named the newest. Throws UsageError where it is not there.
[[nodiscard]] transfer::DeskDiet deskOf(const store::Collection& collection, const DietWords& words,
                                        quantity::Date day,
                                        transfer::CountedAs counted = transfer::CountedAs::Offered);

/// The same, where none is named the one that is fed on the day, or else the newest.
[[nodiscard]] transfer::DeskDiet fedDeskOf(const store::Collection& collection, const DietWords& words,
                                           quantity::Date day,
                                           transfer::CountedAs counted = transfer::CountedAs::Offered);

/// What a person must know before trusting the numbers, a line each.
void tellNotices(const transfer::DeskDiet& desk, std::ostream& out);

}  // namespace tarebowl::app
