// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace tarebowl::store {

/// What another program did.
struct ChildOutcome {
  bool wasFound = false;
  int status = -1;       ///< -1: it was ended by a signal
  std::string out{};     ///< what it printed
  std::string errors{};  ///< what it complained of
};

/// Runs a program that is found on the PATH, to its end. environment: "NAME=value", beside what stands there;
/// nobody but the same person can read it, while arguments are for all to see. It speaks English.
[[nodiscard]] ChildOutcome runProgram(const std::vector<std::string>& arguments,
                                      const std::vector<std::string>& environment = {});

}  // namespace tarebowl::store
