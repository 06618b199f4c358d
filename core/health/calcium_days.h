// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/health/calcium_review.h"

/// The days of a review, animal by animal; what calcium_review.cpp puts together.
namespace tarebowl::health {

/// The bowls with what stayed on of dusts counted as eaten, and no more.
[[nodiscard]] std::vector<intake::EatenBowl> withRetained(std::span<const intake::EatenBowl> bowls,
                                                          const std::map<std::string, double>& retained);

/// What one animal's share of the bowls was: a day's total over how many shared it.
[[nodiscard]] std::vector<intake::DayIntake> perAnimal(std::vector<intake::DayIntake> days,
                                                       const CalciumQuestion& question);

[[nodiscard]] Strand strandOf(food::NutrientId nutrient, std::span<const intake::EatenBowl> bowls,
                              const CalciumQuestion& question);

/// Day by day, with the ratio of the last seven days' sums.
[[nodiscard]] std::vector<RatioDay> ratioDays(std::span<const intake::EatenBowl> bowls,
                                              const CalciumQuestion& question);

/// Mean grams of each food of the problem, per animal and day.
struct MeanBowl {
  diet::Diet offered{};  ///< over days with bowls
  diet::Diet eaten{};    ///< over complete days; empty where there is none
  std::size_t completeDays = 0;
  std::size_t days = 0;
};
[[nodiscard]] MeanBowl meanBowl(std::span<const intake::EatenBowl> bowls, const CalciumQuestion& question);

}  // namespace tarebowl::health
