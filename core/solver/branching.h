// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/node_relaxation.h"

#include <optional>

namespace tarebowl::solver {

/// A column between two points of its grid: the one whose two children gain most in their first pivot, as a
/// product; gains beyond slack, which end a child, count alike.
[[nodiscard]] std::optional<Branch> fractionalBranch(const ScaledProgram& program, const NodeRelaxation& node,
                                                     double slack);
/// A member of a choice whose count does not hold although every column is on its grid.
[[nodiscard]] std::optional<Branch> choiceBranch(const ScaledProgram& program, const NodeRelaxation& node);
/// The widest column that is still open, where nothing else is left to decide by.
[[nodiscard]] std::optional<Branch> widestBranch(const ScaledProgram& program, const NodeRelaxation& node);

}  // namespace tarebowl::solver
