// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace tarebowl::app {

/// What the real program did.
struct Outcome {
  int status = -1;  ///< what the shell sees; -1 where the program was ended by a signal
  std::string out;
  std::string err;
};

/// Starts the program with these arguments in its own process. Without a display, unless environment says
/// otherwise ("NAME=value").
[[nodiscard]] Outcome tarebowl(const std::vector<std::string>& arguments,
                               const std::string& standardInput = {}, const std::string& environment = {});

/// A file in a folder of this test's own, with this text.
[[nodiscard]] std::filesystem::path fileWith(const std::string& name, const std::string& text);

[[nodiscard]] std::string sample(const std::string& name);

}  // namespace tarebowl::app
