// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/solve.h"

/// A small invented diet whose numbers can be followed in the head.
namespace tarebowl::ui {

enum ExampleFood : std::size_t { kLeaves, kInsects, kLimestone };

/// Per 100 g as fed:      dry matter   Ca       P       energy   vitamin E
///   Leaves, raw           10 g        100 mg    50 mg   20 kcal  2 mg
///   Insects (invented)    30 g         30 mg   300 mg  120 kcal  unknown
///   Limestone powder     100 g         40 g      0 mg    0 kcal  0 mg     (scale step 0.1 g, at most 1 g)
/// Vitamin D is known of limestone alone: 0 µg.
/// As it is now: 20 g leaves, 10 g insects, no limestone: 2 + 3 = 5 g dry matter, 20 + 3 = 23 mg Ca, 10 + 30
/// = 40 mg P, so 4.6 g Ca and 8 g P per kg dry matter, Ca : P 0.575, 4 + 12 = 16 kcal, insects 60 % of dry
/// matter. Targets: Ca at least 10 g/kg DM (from memory); P 5 to 9 g/kg DM; energy 15 to 17 kcal a day
/// (hard); vitamin E at least 20 mg/kg DM; vitamin D at least 1 µg/kg DM; Ca : P at least 1; insects at most
/// 70 % of dry matter.
[[nodiscard]] diet::BalanceProblem exampleProblem();

/// Where each lies in exampleProblem().targets.
enum ExampleTarget : std::size_t { kCalcium, kPhosphorus, kEnergy, kVitaminE, kVitaminD };

/// Stands in for the solver: 30 g leaves, 8 g insects, 0.3 g limestone, each kept within the limits it was
/// given.
[[nodiscard]] diet::DietSolution exampleSolve(const diet::BalanceProblem& problem,
                                              const diet::SolveOptions& options);

}  // namespace tarebowl::ui
