// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>

namespace tarebowl::ui {

/// What the window is to be opened on; where nothing is said, on the collection that was open last.
struct WhatToOpen {
  std::optional<std::filesystem::path> file{};  ///< a collection or a problem file
  bool sample = false;                          ///< the invented sample
};

/// Opens the window, as it was left, and returns the program's exit status. `--theme light` or `--theme dark`
/// in the arguments, or the same words in TAREBOWL_THEME, set the theme; else it is as last chosen, or
/// follows the desktop.
int run(int argc, char** argv, const WhatToOpen& what);

}  // namespace tarebowl::ui
