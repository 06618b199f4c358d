// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/problem.h"

#include <optional>
#include <vector>

namespace tarebowl::ui {

/// What lies on the design desk: the problem, the grams as they stand, and which foods keep theirs.
struct DietDraft {
  diet::BalanceProblem problem;
  diet::Diet grams;          ///< one per food
  std::vector<bool> locked;  ///< one per food: the solver must not move it
};

/// A target, ratio or share of the problem.
struct RungRef {
  diet::TargetKind kind = diet::TargetKind::Nutrient;
  std::size_t index = 0;
  bool operator==(const RungRef&) const = default;
};

struct Bounds {
  std::optional<double> min;
  std::optional<double> max;
  bool operator==(const Bounds&) const = default;
};

/// A draft of the problem with its reference diet and nothing locked.
[[nodiscard]] DietDraft draftOf(diet::BalanceProblem problem);

/// The problem the solver gets: a locked food keeps its grams (min = max = grams, whatever its own limits and
/// step).
[[nodiscard]] diet::BalanceProblem problemToSolve(const DietDraft& draft);

/// The problem as it is saved: the grams shown are from then on the diet as it is now.
[[nodiscard]] diet::BalanceProblem problemToSave(const DietDraft& draft);

/// The mass nearest to this one that the food's scale can show; unchanged where whole steps are not asked
/// for.
[[nodiscard]] quantity::Grams onScale(const diet::BalanceProblem& problem, std::size_t food,
                                      quantity::Grams mass);

[[nodiscard]] Bounds boundsOf(const diet::BalanceProblem& problem, RungRef rung);
void setBounds(diet::BalanceProblem& problem, RungRef rung, const Bounds& bounds);

}  // namespace tarebowl::ui
