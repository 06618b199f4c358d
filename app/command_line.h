// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command.h"

#include <optional>
#include <stdexcept>
#include <string>
#include <variant>

namespace tarebowl::app {

/// The window on this file, on the invented sample, or on what it knows itself.
struct OpenWindow {
  std::optional<std::string> file{};
  bool sample = false;
};

/// Help or version.
struct ShowText {
  std::string text;
};

/// What the program was asked to do; a Run is a command of the terminal.
using Asked = std::variant<OpenWindow, ShowText, Run>;

/// A command line that cannot be understood; what() is one line.
class UsageError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// Throws UsageError.
[[nodiscard]] Asked parseCommandLine(int argc, const char* const* argv);

}  // namespace tarebowl::app
