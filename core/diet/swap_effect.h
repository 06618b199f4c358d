// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/diet/food_safety.h"
#include "core/diet/swap.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::diet {

/// A rung of the ladder before and after a swap.
struct RungChange {
  TargetBalance before;
  TargetBalance after;
  [[nodiscard]] bool changesState() const { return before.state != after.state; }
};

/// Something before and after, per animal and day; "at least" where not all of it is known.
struct BeforeAfter {
  double before = 0.0;
  double after = 0.0;
  bool beforeAtLeast = false;
  bool afterAtLeast = false;
};

/// Ca:P of the bowl; nothing where there is no phosphorus.
struct CalciumToPhosphorus {
  std::optional<double> before;
  std::optional<double> after;
  bool isKnown = true;              ///< of every food of the new bowl both are known
  std::optional<std::size_t> rung;  ///< position in rungs of a target on it
};

/// Who must be asked, by house rule: within the same food groups and with every target that was met still
/// met, the keeper decides; otherwise the nutritionist. So it is where a food is to be given with thought, or
/// where what is unknown of it could pass a maximum.
struct SwapApproval {
  bool isSameGroup = true;
  std::vector<std::size_t> lost;      ///< positions in rungs that were met and are not
  std::vector<std::size_t> doubtful;  ///< that were met, and are met as far as is known
  bool isCautioned = false;           ///< a food of it is given in limits only, or may be forbidden
  [[nodiscard]] bool keeperMay() const {
    return isSameGroup && lost.empty() && doubtful.empty() && !isCautioned;
  }
};

/// Two swaps by hand: as much dry matter, or as much energy, as what is missing brought, to the nearest step
/// of the scale. Nothing where it is not known.
struct EqualAmounts {
  std::optional<quantity::Grams> dryMatter;
  std::optional<quantity::Grams> energy;
};
[[nodiscard]] EqualAmounts equalAmounts(const SwapRequest& request, std::size_t candidate);

/// All that a person is told of one swap.
struct SwapEffect {
  BalanceProblem problem;         ///< with the foods of the swap; its reference is the approved bowl
  Diet grams;                     ///< the new bowl, one per food of `problem`
  std::vector<RungChange> rungs;  ///< targets, ratios and shares, in the order of Balance::targets
  BeforeAfter energy;             ///< kcal
  BeforeAfter dryMatter;          ///< g
  CalciumToPhosphorus calciumToPhosphorus;
  std::vector<food::NutrientId> unknown;  ///< nutrients of the targets that are unknown of a food of the swap
  std::vector<FoodFinding> cautions;      ///< food: position in the request's candidates
  std::vector<std::optional<EatenBefore>> eatenBefore;  ///< one per part
  SwapApproval approval;
};
/// Of whatever swap: also of grams that a keeper chose.
[[nodiscard]] SwapEffect effectOf(const SwapRequest& request, const Swap& swap);

/// So many grams of one candidate as a swap, judged like those that are ranked; nothing where it would miss a
/// hard rule, break a structure rule or may not be given.
[[nodiscard]] std::optional<Swap> swapOf(const SwapRequest& request, std::size_t candidate,
                                         quantity::Grams grams);

}  // namespace tarebowl::diet
