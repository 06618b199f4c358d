// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"
#include "core/solver/solve.h"

#include <cstddef>
#include <vector>

namespace tarebowl::solver {

/// Rows and choices that, with the limits and the grid of the columns, cannot hold together, while any all
/// but one of them can.
struct Conflict {
  std::vector<Eigen::Index> rows;
  std::vector<std::size_t> choices;
  bool minimal = true;  ///< false: time ran out before every member was shown to be needed
  [[nodiscard]] bool empty() const { return rows.empty() && choices.empty(); }
};

enum class Among { HardOnly, AllRows };

/// Deletion filtering (Chinneck and Dravnieks 1991, "Locating minimal infeasible constraint sets in linear
/// programs") started from a certificate of the relaxation. Empty where everything is seen to hold together.
/// Among::AllRows treats elastic rows as hard.
[[nodiscard]] Conflict findConflict(const Program& program, Among among, const Limits& limits = {});

}  // namespace tarebowl::solver
