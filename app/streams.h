// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>

namespace tarebowl::app {

/// What the program returns to the shell, as the documented problem format says.
enum ExitStatus : int { kDone = 0, kInternalFailure = 1, kUnreadable = 2, kImpossible = 3 };

/// Where a command reads and writes.
struct Streams {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
};

}  // namespace tarebowl::app
