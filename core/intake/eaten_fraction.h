// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/intake/eaten.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// What a fraction rests on.
enum class FractionFrom {
  Own,     ///< this food's bowls alone: its class has too few foods to learn from
  Shrunk,  ///< its bowls, drawn towards those of its class
  Class,   ///< its class alone: it has no bowl of its own
};

/// How much of what is offered of a food a group eats, in the long run.
struct EatenFraction {
  std::string food{};
  std::string foodClass{};
  FractionFrom from = FractionFrom::Own;
  double fraction = 1.0;        ///< may lie a little outside 0 … 1 by errors of weighing
  double sd = 0.0;              ///< of the fraction in the long run: how well it is known
  double dayScatter = 0.0;      ///< of one bowl's fraction about it
  double ownWeight = 1.0;       ///< 1: its own bowls alone; 0: its class alone
  std::optional<double> own{};  ///< eaten / offered over its own bowls
  std::size_t bowls = 0;
};

/// Learned for the foods of the bowls and for those asked for beside them (food, class); a food with neither
/// bowls nor a class of at least four foods with bowls has none.
///
/// Per food f = sum eaten / sum offered over the n bowls whose leftover is known. One bowl's scatter s is
/// pooled over the foods of the class: s² = sum of (e_b / o_b - f)² / (bowls - foods). The foods' own
/// long-run fractions scatter about their class by tau² (moments; DerSimonian and Laird 1986, Controlled
/// Clinical Trials 7:177-188). With v = s² / n, K foods and m the class's weighted mean (empirical Bayes,
/// normal; Morris 1983, Journal of the American Statistical Association 78:47-55; both from memory)
///   B = (K - 3) / (K - 1) · v / (v + tau²)        fraction = (1 - B) f + B m
///   sd² = v (1 - B (K - 1) / K) + 2 / (K - 3) · B² (f - m)²
/// A class with fewer than four foods shrinks nothing: nobody knows then how its foods differ.
struct FoodOfClass {
  std::string food{};
  std::string foodClass{};
};
[[nodiscard]] std::vector<EatenFraction> learnFractions(std::span<const EatenBowl> bowls,
                                                        std::span<const FoodOfClass> alsoAsked = {});

/// The problem solved on what is eaten: each food with a fraction gets it (taken into 0 … 1), and its
/// uncertainty as scatter of all its nutrients at once. A nutrient c per 100 g with scatter s_c reaches the
/// animal as f c with variance f² s_c² + c² sd² + s_c² sd², so its scatter becomes
///   sqrt(s_c² + (c² + s_c²) (sd / f)²).
/// Within one target's chance row this is exact to first order. Across nutrients of a food the error is one
/// and the same, which a ratio's scatter does not use: there it is overestimated, so a chance is never
/// stated too high.
[[nodiscard]] diet::BalanceProblem onWhatIsEaten(diet::BalanceProblem problem,
                                                 std::span<const EatenFraction> fractions);

}  // namespace tarebowl::intake
