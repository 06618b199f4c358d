// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/conflict.h"
#include "core/diet/formulation.h"
#include "core/diet/measure.h"

#include <chrono>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// The least that one bound must give way so that a conflict is none.
struct LeastChange {
  std::string id;  ///< of the target, ratio, share or "choice:GROUP"
  BoundSide side = BoundSide::Min;
  double from = 0.0;  ///< the bound as it is, in the target's own unit and basis; of a choice: foods
  double to = 0.0;    ///< the nearest bound that resolves
  /// Whether every rule that counts then holds (all of a compromise, the hard ones where they contradict each
  /// other); else only those of the conflict do, and there is another.
  bool resolvesAll = false;
  bool onGrid =
      false;  ///< with the scale's steps and the choices; else of any amounts, and a grid may need more
};

struct LeastChangeOptions {
  std::chrono::milliseconds deadline{2'000};
  std::stop_token stop;
};

/// One for each bound of a member of the conflict that can resolve it alone, in the order of conflict. Each
/// is worked out by maximising the measure over the bowls that keep the other rules (Dinkelbach 1967, "On
/// nonlinear fractional programming": a target per dry matter is a fraction), on the grid where time allows.
/// The reference bowl stays as it is while a bound moves.
[[nodiscard]] std::vector<LeastChange> leastChanges(const Formulation& formulation,
                                                    std::span<const Measure> measures, bool hardOnly,
                                                    std::span<const std::string> conflict,
                                                    const LeastChangeOptions& options = {});

}  // namespace tarebowl::diet
