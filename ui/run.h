// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>

namespace tarebowl::ui {

/// Opens the window on a collection or a problem file, or on the invented sample where none is given, and
/// returns the program's exit status. `--theme light` or `--theme dark` in the arguments, or the same words
/// in TAREBOWL_THEME, set the theme; else it is as last chosen, or follows the desktop.
int run(int argc, char** argv, const std::optional<std::filesystem::path>& file);

}  // namespace tarebowl::ui
