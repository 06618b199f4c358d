// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/intake/choice.h"
#include "core/intake/daily_intake.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// A mean over days with its interval: t · sd / sqrt(n) from day to day, and beside it what does not shrink
/// with more days (composition, say), added in quadrature to first order.
struct MeanOfDays {
  double mean = 0.0;
  std::optional<double> dayToDaySd{};  ///< nothing below two days
  std::optional<Interval> interval{};
  double commonSd = 0.0;  ///< of errors that all days share
  std::size_t days = 0;
};
[[nodiscard]] std::optional<MeanOfDays> meanOfDays(std::span<const DayIntake> days, double confidence);

/// One food over the study, grams as offered unless said otherwise. Only bowls whose leftover is known.
struct FoodReport {
  std::string food{};
  double offered = 0.0;
  double left = 0.0;           ///< as weighed
  double leftAsOffered = 0.0;  ///< corrected for water
  double lost = 0.0;           ///< spilled or stolen
  double eaten = 0.0;
  std::size_t bowls = 0;
  std::size_t bowlsNotKnown = 0;
  std::size_t bowlsEstimated = 0;
  std::optional<MeanOfDays> eatenPerDay{};  ///< of all animals together; days on which it was not fed count 0
};

struct NutrientReport {
  food::NutrientId nutrient{0};
  std::vector<DayIntake> days{};          ///< of all animals together
  std::optional<MeanOfDays> perAnimal{};  ///< per animal and day
};

struct StudyReport {
  quantity::Date from{};
  quantity::Date until{};
  std::size_t days = 0;       ///< with a bowl
  std::size_t daysKnown = 0;  ///< on which all of it is known
  std::vector<FoodReport> foods{};
  std::vector<NutrientReport> nutrients{};
  /// The mean day per animal as eaten, and as offered, against the targets; nothing where no day is known.
  std::optional<diet::Balance> asEaten{};
  std::optional<diet::Balance> asOffered{};
  std::size_t findings = 0;
};

/// problem: targets and foods (each with its composition); how many animals eat is what the bowls say. bowls
/// of one group in order. Foods of the bowls that the problem lacks count as of unknown composition in the
/// nutrients, and are no part of the balance.
[[nodiscard]] StudyReport reportStudy(const diet::BalanceProblem& problem, std::span<const EatenBowl> bowls,
                                      std::span<const food::NutrientId> nutrients, double confidence = 0.95);

}  // namespace tarebowl::intake
