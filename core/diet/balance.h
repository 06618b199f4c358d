// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::diet {

enum class TargetState { Met, AtMin, AtMax, Short, Over, Unknown };
[[nodiscard]] std::string_view symbolOf(TargetState state);

/// Which list of the problem a line of the balance speaks of.
enum class TargetKind { Nutrient, Ratio, Share };

/// How a diet stands against one target, ratio or share: one rung of the balance ladder.
struct TargetBalance {
  TargetKind kind = TargetKind::Nutrient;
  std::size_t index = 0;  ///< in the problem's list of that kind
  std::string id;
  std::optional<double> value;  ///< in the target's unit per basis; nothing where the basis of the bowl is 0
  std::optional<double> min;
  std::optional<double> max;
  TargetState state = TargetState::Unknown;
  bool atLeast = false;  ///< the value of some eaten food is unknown (coverage < 1) and could only add
  double shortfall =
      0.0;  ///< relative, of the bound that is missed (the sum where a confidence makes both be missed)
  double coverage = 1.0;         ///< share of eaten dry matter that comes from foods with a known value
  double sd = 0.0;               ///< of value, from the scatter of the foods' values; 0 where none is stated
  std::optional<double> chance;  ///< that the bounds hold, normal scatter; nothing where coverage is 0
};

struct Balance {
  std::vector<TargetBalance> targets;  ///< targets, then ratios, then shares, each in the problem's order
  double shortfall = 0.0;              ///< sum of weight times shortfall over all that is not hard
};

/// A relative shortfall up to this is none: it is the slack of the solver's second stage and of rounding.
inline constexpr double kNoShortfall = 1e-9;

/// How the grams of a diet stand against every target of the problem. Throws std::invalid_argument unless the
/// diet has one entry per food. A target that cannot be counted (per body mass without one; in a unit its
/// nutrient does not have) is unknown, with no value.
[[nodiscard]] Balance balance(const BalanceProblem& problem, const Diet& diet);

/// What one food brings of a nutrient, as eaten per animal and day.
struct Contribution {
  std::size_t food = 0;          ///< index into the problem's foods
  std::optional<double> amount;  ///< in the nutrient's own unit; nothing where the food's value is unknown
  double share = 0.0;            ///< of the known total, 0 … 1
  std::string source;
};

/// Largest first; foods with 0 g are left out, foods with an unknown value come last.
[[nodiscard]] std::vector<Contribution> contributions(const BalanceProblem& problem, const Diet& diet,
                                                      food::NutrientId nutrient);

}  // namespace tarebowl::diet
