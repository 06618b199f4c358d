// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/balance.h"
#include "core/health/calcium_binding.h"
#include "core/health/calcium_dose.h"
#include "core/intake/daily_intake.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Calcium and what goes with it, as offered and as eaten, over some weeks.
namespace tarebowl::health {

/// What the review is made from: bowls in order of days, and who shared them.
struct CalciumQuestion {
  quantity::Date from{};
  quantity::Date to{};
  std::span<const intake::EatenBowl> bowls{};
  /// The foods of the bowls (and the supplement), the targets and ratios in force, the eater: how many share
  /// a bowl and what one weighs.
  diet::BalanceProblem problem{};
  /// How many shared the bowls on a day.
  std::map<quantity::Date, int> animals{};
  /// Of dusts: the share that stays on and reaches the mouth, by food. All of it where none is named.
  std::map<std::string, double> retained{};
  std::string supplement{};  ///< food to be added; empty: none
  double supplementRetained = 1.0;
  double supplementEaten = 1.0;
};

/// One day of a nutrient, per animal.
struct StrandDay {
  quantity::Date day{};
  std::optional<double> offered{};  ///< nothing where it is known of no food
  std::optional<double> eaten{};    ///< the same, and where a leftover is not known
  double sd = 0.0;                  ///< of eaten
  double atMost = 0.0;
  double coverage = 1.0;
  std::optional<double> rolling{};  ///< mean as eaten of the last seven days, at least four known
};
inline constexpr std::size_t kRollingDays = 7;
inline constexpr std::size_t kRollingAtLeast = 4;

/// Means over the days that are known, per animal.
struct StrandMeans {
  std::optional<double> perDay{};
  std::optional<double> perKgBody{};  ///< nothing where nobody was weighed
  std::optional<double> perKgDryMatter{};
};

/// A nutrient through the period, in its own unit.
struct Strand {
  food::NutrientId nutrient{0};
  std::vector<StrandDay> days{};
  StrandMeans offered{};
  StrandMeans eaten{};
  double eatenSd = 0.0;  ///< of the mean per day: weighing, water, composition
  std::optional<double> dayToDaySd{};
  std::size_t known = 0;  ///< days
  double coverage = 1.0;  ///< the lowest of a known day; 0 where none is known
};

struct RatioDay {
  quantity::Date day{};
  std::optional<double> offered{};
  std::optional<double> eaten{};
  double sd = 0.0;
  double coverage = 1.0;
  std::optional<double> rolling{};  ///< of the last seven days' ratios as eaten
};

/// How the period stands against one target: diet::TargetBalance of the mean bowl, as offered and as eaten.
struct CalciumZone {
  std::string id{};
  food::NutrientId nutrient{0};
  std::optional<food::NutrientId> per{};   ///< of a ratio: what it is counted against
  std::optional<quantity::Unit> unit{};    ///< nothing for a ratio
  std::optional<quantity::Basis> basis{};  ///< the same
  animal::TargetOrigin origin{};
  diet::TargetBalance offered{};
  diet::TargetBalance eaten{};
};

/// The dose where less of the supplement is retained or eaten than thought.
struct DoseSensitivity {
  double retained = 1.0;
  double eaten = 1.0;
  Dose dose{};
  std::optional<double> caPAtAnswer{};  ///< Ca:P with the grams of the answer, if so much reached the mouth
};

struct SupplementAdvice {
  std::string food{};
  double retained = 1.0;
  double eaten = 1.0;
  Dose dose{};
  std::vector<CalciumZone> after{};  ///< zones with the dose, as eaten
  std::optional<double> caPBefore{};
  std::optional<double> caPAfter{};
  std::vector<DoseSensitivity> sensitivity{};
};

struct CalciumReview {
  quantity::Date from{};
  quantity::Date to{};
  std::size_t daysOfPeriod = 0;
  std::size_t daysWithBowls = 0;
  std::size_t completeDays = 0;          ///< on which all leftovers are known: what zones and doses rest on
  std::vector<Strand> strands{};         ///< Ca, P, Mg, vitamin D, D3
  std::vector<RatioDay> ratio{};         ///< Ca:P
  std::optional<double> ratioOffered{};  ///< of the period's means
  std::optional<double> ratioEaten{};
  double ratioSd = 0.0;
  std::vector<CalciumZone> zones{};
  OxalateShare oxalate{};
  PhytateShare phytate{};
  std::optional<SupplementAdvice> advice{};
};

/// Days without a bowl and foods without a leftover stay missing; nothing is counted as 0. problem.targets
/// and problem.ratios beyond calcium, phosphorus, magnesium and vitamin D are not looked at.
[[nodiscard]] CalciumReview reviewCalcium(const CalciumQuestion& question);

/// Calcium, phosphorus, magnesium, vitamin D and D3: what a review is about.
[[nodiscard]] std::vector<food::NutrientId> calciumNutrients();

}  // namespace tarebowl::health
