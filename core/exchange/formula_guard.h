// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

/// A spreadsheet that opens a CSV file takes a cell that begins with = + - @ for a formula, and a name or a
/// note that somebody typed could then run what it says.
namespace tarebowl::exchange {

/// The text with an apostrophe before it where it would be taken for a formula; a number is none.
[[nodiscard]] std::string guarded(const std::string& text);

/// Takes the apostrophe away again, so that what the program wrote reads back as it was.
[[nodiscard]] std::string_view withoutGuard(std::string_view text);

}  // namespace tarebowl::exchange
