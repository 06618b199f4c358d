// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/contents.h"
#include "core/intake/eaten.h"

#include <optional>
#include <span>
#include <vector>

namespace tarebowl::intake {

/// What a group ate of one thing on a day, all bowls and animals together: grams, or a nutrient in its own
/// unit.
struct DayIntake {
  quantity::Date day{};
  double offered = 0.0;              ///< of foods whose value is known
  std::optional<Uncertain> eaten{};  ///< nothing where any food's leftover is not known: stays missing
  double atLeast = 0.0;              ///< what is known to be eaten; eaten itself where it is known
  double atMost = 0.0;               ///< nobody can have eaten more than this
  double lost = 0.0;                 ///< spilled or stolen: offered, and not eaten by this group
  double coverage = 1.0;             ///< share of the dry matter eaten (at most) whose value is known
  [[nodiscard]] bool unknownAdds() const { return coverage < 1.0; }  ///< the true value can only be more
  int animals = 1;  ///< the most that share a bowl of the day
  std::size_t bowls = 0;
  std::size_t itemsNotKnown = 0;
  bool estimated = false;  ///< parts of a mixed remainder were estimated by eye
  std::size_t findings = 0;
};

/// The same for one animal of the group on the mean: what all ate over how many they are.
[[nodiscard]] DayIntake perAnimal(DayIntake day);

/// One entry for each day that has a bowl, in order; bowls must be of one group and ordered by day.
/// Errors of weighing, water and parts are a day's own; those of composition stay shared between days.
[[nodiscard]] std::vector<DayIntake> dailyIntake(std::span<const EatenBowl> bowls, const Contents& contents);

/// The total of the days that are known, and how many these are.
struct PeriodIntake {
  std::size_t days = 0;                   ///< with a bowl
  std::size_t known = 0;                  ///< whose intake is known
  Uncertain total{};                      ///< of the known days
  double coverage = 1.0;                  ///< the lowest of a known day
  std::optional<Uncertain> meanPerDay{};  ///< nothing where no day is known
  /// The standard deviation of the days about their mean; nothing below two days.
  std::optional<double> dayToDaySd{};
};
[[nodiscard]] PeriodIntake overPeriod(std::span<const DayIntake> days);

/// One over the other on each day: Ca:P as eaten, or a nutrient per dry matter. Errors that lie in both
/// (a weighing, the water) count as they move the ratio.
struct DayRatio {
  quantity::Date day{};
  std::optional<double> offered{};   ///< nothing where nothing of the other was offered
  std::optional<Uncertain> eaten{};  ///< nothing where either is not known or nothing of the other was eaten
  double coverage = 1.0;             ///< the lower of the two
};
[[nodiscard]] std::vector<DayRatio> dailyRatio(std::span<const EatenBowl> bowls, const Contents& of,
                                               const Contents& to);

}  // namespace tarebowl::intake
