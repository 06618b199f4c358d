// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"

#include <optional>
#include <string>
#include <vector>

/// How little of a supplement brings calcium and Ca:P into their zones.
namespace tarebowl::health {

/// A supplement is added to the bowl; only part of it reaches the mouth. Dust falls off insects in the
/// minutes after dusting; what is left in the bowl is not eaten.
struct SupplementUse {
  std::size_t supplement = 0;  ///< index into the problem's foods
  double retained = 1.0;       ///< of what is put on, 0 < retained <= 1
  double eaten = 1.0;          ///< of what is retained, 0 < eaten <= 1
};

enum class DoseAnswer {
  NothingNeeded,  ///< all minima hold as it is
  Found,
  NotByThisFood,  ///< a minimum that no amount of this food reaches: Ca:P with a food of low Ca:P itself
  CrossesALimit,  ///< the least that would do is above what a maximum allows
  NoTarget,       ///< nothing says what calcium or Ca:P should be
  ContentUnknown  ///< nobody knows how much calcium the supplement holds
};

/// A rule that the dose was sought for, or held to.
struct DoseRule {
  std::string id{};
  std::optional<double> exact{};  ///< grams a bowl and day at which it is just met
  bool upperLimit = false;        ///< a maximum: exact is the most it allows
};

struct Dose {
  DoseAnswer answer = DoseAnswer::NoTarget;
  std::optional<double> exact{};       ///< grams in the bowl a day at which all minima are just met
  std::optional<double> grams{};       ///< the same in whole steps of the supplement's scale, upwards
  std::optional<double> most{};        ///< the most that all maxima allow; nothing where none binds
  std::vector<DoseRule> rules{};       ///< what binds: minima that are missed, maxima that a dose can reach
  std::vector<std::string> crossed{};  ///< maxima that the answer would break, or that are broken already
  /// Further maxima that it would break if all of it reached the mouth: what is retained and eaten is
  /// assumed.
  std::vector<std::string> crossedIfAllEaten{};
};

/// problem: its foods, targets and ratios; eaten: grams of each food as eaten per animal and day, one each.
/// The minima of calcium targets and of Ca:P ratios are sought; every maximum of any target and ratio of the
/// problem is held, safe upper limits of Ca, P and D among them. Each is linear in the grams added, so the
/// answer is exact arithmetic:
///   (part + a g) / (whole + b g) >= min  ⟺  g >= (min whole - part) / (a - min b)  where a > min b.
/// Grams are of the bowl of all animals (problem.eater.count).
[[nodiscard]] Dose smallestDose(const diet::BalanceProblem& problem, const diet::Diet& eaten,
                                const SupplementUse& use);

/// The diet as eaten with so many grams a bowl and day of the supplement added.
[[nodiscard]] diet::Diet withDose(const diet::BalanceProblem& problem, const diet::Diet& eaten,
                                  const SupplementUse& use, double grams);

}  // namespace tarebowl::health
