// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/version_problem.h"
#include "core/intake/eaten_fraction.h"
#include "core/store/group_reading.h"

#include <vector>

/// A diet counted by what is eaten of it.
namespace tarebowl::transfer {

enum class CountedAs { Offered, Eaten };

/// How much of each of these foods the group eats, learned from its bowls of the eight weeks before the day
/// (house rule, no source). A food of which nothing can be learned is not in it: it counts as eaten whole.
/// Throws StoreError.
[[nodiscard]] std::vector<intake::EatenFraction> learnEating(const store::Collection& collection,
                                                             const store::KnownGroup& group,
                                                             const diet::VersionContext& context,
                                                             quantity::Date day);

/// Foods of the context with what is eaten of them, so that a version made from it is judged and solved on
/// what is eaten.
void countEaten(diet::VersionContext& context, const std::vector<intake::EatenFraction>& fractions);

/// The same of a problem whose foods stand for those of a version.
[[nodiscard]] diet::BalanceProblem countedEaten(diet::BalanceProblem problem,
                                                const std::vector<diet::PlaceInVersion>& places,
                                                const std::vector<intake::EatenFraction>& fractions);

}  // namespace tarebowl::transfer
