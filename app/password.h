// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace tarebowl::app {

/// Asks for a password at the terminal, where it does not show; nothing where there is no terminal, or
/// nothing was typed. It is written nowhere.
[[nodiscard]] std::optional<std::string> typedPassword(const std::string& question);

}  // namespace tarebowl::app
