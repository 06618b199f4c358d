// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/problem_input.h"

namespace tarebowl::app {

struct SolveWords {
  ProblemWords problem{};
  std::string group{};  ///< of the collection in problem.file, instead of a problem
  std::string foods{};  ///< of that collection, for the group
  bool table = false;   ///< for people rather than for programs
  double seconds = 10.0;
  std::string larder{};  ///< foods on hand, for remedies
  bool explain = false;
};

/// The grams that meet the targets: "tarebowl-result/1", or a table. Throws as Run says.
[[nodiscard]] int solve(const SolveWords& words, const Streams& streams);

/// solve
void defineSolve(CLI::App& app, Run& chosen);

}  // namespace tarebowl::app
