// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

#include <filesystem>
#include <optional>
#include <string_view>

namespace tarebowl::app {

/// Opens the window on a file, or on what it knows itself where there is none. Where there is no window to
/// open, says so in one line and solves the file in the terminal instead.
[[nodiscard]] int openWindow(const OpenWindow& what, int argc, char** argv, const Streams& streams);

/// Why no window can be opened here: "there is no display"; nothing where one can.
[[nodiscard]] std::optional<std::string_view> windowIsMissing();

/// The problem of the invented sample that the program shows when it is given none; nothing where it is not
/// installed.
[[nodiscard]] std::optional<std::filesystem::path> samplePath();

}  // namespace tarebowl::app
