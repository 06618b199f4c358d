// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace tarebowl::exchange {

/// Without spaces, tabs and line breaks around it.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// The same, with tabs and line breaks inside it as spaces: a name as a list shows it.
[[nodiscard]] std::string onOneLine(std::string_view text);

/// Lower case (ASCII), with Unicode's minus and dashes as "-", its spaces as " ", the greek mu as the micro
/// sign, "’" as "'": what looks alike in a table reads alike.
[[nodiscard]] std::string foldedText(std::string_view text);

}  // namespace tarebowl::exchange
