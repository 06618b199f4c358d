// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/options.h"
#include "core/diet/problem.h"

namespace tarebowl::app {

/// Where a problem comes from.
struct ProblemWords {
  std::string file{};                   ///< a problem file, "-" for standard input; with a diet, a collection
  std::string collection{};             ///< what the file's foods without values come from; empty: nothing
  DietWords diet{};                     ///< of the collection in file, instead of a problem file
  std::optional<quantity::Date> day{};  ///< that the diet is read on; nothing: today
};

/// The problem in the file. Throws exchange::FormatError and store::StoreError.
[[nodiscard]] diet::BalanceProblem readProblemFile(const ProblemWords& words, const Streams& streams);

/// The problem in the file, or the one that the design desk solves for the version of the diet, locked foods
/// held; what has happened since that was written is told beside it. Throws UsageError too.
[[nodiscard]] diet::BalanceProblem problemOf(const ProblemWords& words, const Streams& streams);

}  // namespace tarebowl::app
