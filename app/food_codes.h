// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace tarebowl::app {

/// Codes parted by commas, without the blanks around them.
[[nodiscard]] std::vector<std::string> codesIn(const std::string& text);

/// A file with a code on each line, where there is one of this name; or else codes parted by commas.
[[nodiscard]] std::vector<std::string> foodCodes(const std::string& foods);

}  // namespace tarebowl::app
