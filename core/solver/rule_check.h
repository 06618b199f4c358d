// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/conflict.h"

#include <span>
#include <vector>

namespace tarebowl::solver {

/// How much of a program counts when rules are asked whether they hold together.
enum class Strictness {
  Rows,     ///< rows and limits alone: no grid, no choices, no scatter. What fails here fails everywhere.
  Amounts,  ///< everything but the grid
  All
};

/// Whether some rules hold together.
struct Verdict {
  enum class Kind { Holds, Fails, Unknown };
  Kind kind = Kind::Unknown;
  Eigen::VectorXd x;  ///< Holds: a point that keeps them
  /// Fails, under Strictness::Rows: those whose rows the certificate names. They fail by themselves.
  std::vector<std::size_t> support;
};

/// The chosen rules alone: their rows elastic at price 1, nothing sought.
[[nodiscard]] Program programOfRules(const Program& program, std::span<const Rule> rules,
                                     std::span<const std::size_t> chosen, Strictness strictness);

[[nodiscard]] Verdict holdTogether(const Program& program, std::span<const Rule> rules,
                                   std::span<const std::size_t> chosen, Strictness strictness,
                                   const Limits& limits);

/// By how much x misses a rule: the largest violation of its rows, or 1 where a choice is not kept; 0 where
/// it holds.
[[nodiscard]] double missOf(const Program& program, const Rule& rule, const Eigen::VectorXd& x,
                            Strictness strictness);

}  // namespace tarebowl::solver
