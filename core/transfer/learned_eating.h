// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_problem.h"
#include "core/intake/eaten_fraction.h"
#include "core/store/animal_records.h"
#include "core/store/collection.h"

#include <span>
#include <string>
#include <vector>

/// A diet counted by what is eaten of it.
namespace tarebowl::transfer {

enum class CountedAs { Offered, Eaten };

/// Whose eating is learned from, up to which day.
struct Eaters {
  std::string group{};
  std::string place{};   ///< its section, where its pans stand
  quantity::Date day{};  ///< is not learned from
};
[[nodiscard]] Eaters eatersOn(const store::StoredGroup& group, quantity::Date day);

/// How much of each of these foods they eat, learned from their bowls of the eight weeks before the day
/// (house rule, no source). A food of which nothing can be learned is not in it: it counts as eaten whole.
/// Throws StoreError.
[[nodiscard]] std::vector<intake::EatenFraction> learnEating(const store::Collection& collection,
                                                             const Eaters& eaters,
                                                             std::span<const intake::FoodOfClass> foods);

/// Foods that may be given to them, with what is eaten of each.
void countEaten(const store::Collection& collection, const Eaters& eaters,
                std::vector<diet::DietFood>& foods);

/// Foods of the context with what is eaten of them, so that a version made from it is judged and solved on
/// what is eaten.
void countEaten(diet::VersionContext& context, const std::vector<intake::EatenFraction>& fractions);

/// The same of a problem whose foods stand for those of a version.
[[nodiscard]] diet::BalanceProblem countedEaten(diet::BalanceProblem problem,
                                                const std::vector<diet::PlaceInVersion>& places,
                                                const std::vector<intake::EatenFraction>& fractions);

}  // namespace tarebowl::transfer
