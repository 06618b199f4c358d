// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
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

/// A command with all that it was told; returns an ExitStatus. Throws exchange::FormatError for a file that
/// cannot be read, store::StoreError for a collection, UsageError where it was told what cannot be.
using Run = std::function<int(const Streams&)>;

}  // namespace tarebowl::app
