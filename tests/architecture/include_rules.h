// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/architecture/source_tree.h"

#include <span>
#include <vector>

namespace tarebowl::architecture {

/// The direction of dependence, read from the include lines of all C++ files:
///
///   app → ui → transfer → store, exchange → health → intake → diet → animal → food → quantity, and diet →
///   solver
///
/// A room includes itself and the rooms to its right. Only diet includes solver, and solver includes itself
/// alone. Nothing in core includes Qt. resources may be included by all and includes nothing. Tests include
/// what they like, and nobody includes a test.
[[nodiscard]] std::vector<Finding> checkIncludes(std::span<const SourceFile> sources);

}  // namespace tarebowl::architecture
