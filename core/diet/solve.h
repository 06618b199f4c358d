// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"

#include <chrono>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::diet {

enum class DietStatus {
  Balanced,    ///< every target holds
  Compromise,  ///< the least possible shortfall is above zero
  Impossible,  ///< the hard rules contradict each other
  Unbounded,   ///< nothing limits the objective: a limit is missing
  Stopped,     ///< cancelled or out of time before any answer
  Failed       ///< the answer did not pass its own verification; see reason
};
[[nodiscard]] std::string_view symbolOf(DietStatus status);

struct SolveOptions {
  std::chrono::milliseconds deadline{10'000};  ///< best answer so far is returned with its gap
  std::stop_token stop;
  bool findConflict = true;  ///< name the rules that fight where not all hold
};

struct DietSolution {
  DietStatus status = DietStatus::Failed;
  std::string reason;      ///< Failed, Unbounded, Stopped: a code word and facts, not a sentence for users
  Diet grams;              ///< empty for Impossible, Unbounded, Stopped and Failed
  double shortfall = 0.0;  ///< sum of weight times relative shortfall
  /// Closest: squared relative distance; lowest cost: cost per animal and day; fewest foods: how many; else
  /// the nutrient's amount.
  double objective = 0.0;
  double provenGap = 0.0;  ///< relative, of the stage that was not closed
  Balance balance;
  /// Beside balance.targets: what the objective would gain if the bound that pushes were raised by all of
  /// itself (one of 0: by one unit), at the present rate and with any amounts; 0 where none pushes.
  std::vector<double> multipliers;
  /// A smallest set of target, ratio and share ids, "choice:GROUP" and ids of exclusions and cautions that
  /// cannot hold together.
  std::vector<std::string> conflict;
  bool conflictIsSmallest = true;   ///< false: time ran out before every member was shown to be needed
  bool conflictOnlyOnGrid = false;  ///< with amounts between the scale's steps they could hold together
  std::chrono::microseconds solveTime{0};
};

/// The reference diet x°: the given one, or equal grams of all foods scaled to the energy target (see the
/// problem format).
[[nodiscard]] Diet referenceDiet(const BalanceProblem& problem);

/// Grams that meet the targets: least shortfall first, then the objective. Nothing of a food that may not be
/// given (food_safety.h), whatever its least amount. Pure: no I/O, no globals, safe on any thread.
[[nodiscard]] DietSolution solve(const BalanceProblem& problem, const SolveOptions& options = {});

}  // namespace tarebowl::diet
