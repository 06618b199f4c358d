// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/solver/program.h"
#include "core/solver/solve.h"

#include <cstddef>
#include <span>
#include <vector>

namespace tarebowl::solver {

/// Rows and choices that are kept or dropped as one: both bounds of a target, every choice of one group.
/// Elastic rows count as hard here.
struct Rule {
  std::vector<Eigen::Index> rows;
  std::vector<std::size_t> choices;
};

/// Rules that, with the limits and the grid of the columns, cannot hold together, while any all but one of
/// them can.
struct Conflict {
  std::vector<std::size_t> rules;  ///< positions in the rules that were asked about, ascending
  bool minimal = true;             ///< false: not every member was shown to be needed within the limits
  bool onlyOnGrid = false;         ///< with amounts between the grid's points these rules would hold together
  int solves = 0;                  ///< of small programs, that it took
  [[nodiscard]] bool empty() const { return rules.empty(); }
};

/// Gathers rules until no point keeps those gathered, each time the one that the last point misses most, and
/// then leaves out, one by one, each that is not needed (deletion filtering: Chinneck and Dravnieks 1991,
/// "Locating minimal infeasible constraint sets in linear programs"). Where the program contradicts itself
/// without grid, choices and scatter, only the rows that its certificate names are gathered from. Empty where
/// all rules are seen to hold together, or where time did not suffice to see that they do not; knownToFail:
/// whoever asks has proved that all together do not, and time that runs out is then no reason for silence.
[[nodiscard]] Conflict findConflict(const Program& program, std::span<const Rule> rules,
                                    bool knownToFail = false, const Limits& limits = {});

}  // namespace tarebowl::solver
