// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"

#include <functional>

namespace CLI {  // NOLINT(readability-identifier-naming): CLI11 gives it its name
class App;
class Option;
}  // namespace CLI

namespace tarebowl::app {

/// A command with all that it was told; returns an ExitStatus. Throws exchange::FormatError for a file that
/// cannot be read, store::StoreError for a collection, UsageError where it was told what cannot be.
using Run = std::function<int(const Streams&)>;

}  // namespace tarebowl::app
