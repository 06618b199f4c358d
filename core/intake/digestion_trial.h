// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/intake/digestibility.h"
#include "core/intake/eaten.h"
#include "core/intake/faeces.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

/// What a group digested of what it ate, where its faeces were collected and analysed.
namespace tarebowl::intake {

/// Dry matter or one nutrient, of all animals over all days of the collection.
struct DigestedLine {
  std::optional<food::NutrientId> nutrient{};  ///< nothing: dry matter
  Measured eaten{};
  Measured inFaeces{};
  double coverage = 1.0;  ///< of what was eaten; below 1 the digestibility is at least what is said
  std::optional<Digestibility> apparent{};  ///< nothing where a day is not known or nothing was eaten
};

struct DigestionTrial {
  FaecesCollected collected{};
  std::size_t days = 0;               ///< of the collection
  std::size_t daysKnown = 0;          ///< on which what was eaten is known of every food
  std::vector<DigestedLine> lines{};  ///< dry matter first
};

/// Apparent digestibility by total collection, on dry matter: (eaten - in faeces) / eaten, with
///   in faeces = fresh · dry matter (a share), and of a nutrient that times its content per gram of dry
///   matter.
/// What was eaten is of the days of the collection; where one of them is not known nothing is said, for a sum
/// over the others would be too small. problem: foods and how energy is estimated; bowls of the group in
/// order, also of other days.
[[nodiscard]] DigestionTrial digestionOf(const FaecesCollected& collected,
                                         const diet::BalanceProblem& problem,
                                         std::span<const EatenBowl> bowls);

}  // namespace tarebowl::intake
