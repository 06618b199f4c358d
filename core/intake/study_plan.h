// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/fed_bowl.h"
#include "core/intake/series.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace tarebowl::intake {

/// How many days an intake study needs.
struct Precision {
  double halfWidth = 0.0;    ///< of the mean's interval, in the unit of what is measured; above 0
  double confidence = 0.95;  ///< between 0 and 1
};

/// The least n with t(n - 1) · sd / sqrt(n) <= halfWidth: the fixed point of n = (t(n - 1) · sd / d)², which
/// textbooks iterate (Snedecor and Cochran, Statistical Methods, from memory). At least 2. Nothing where more
/// than ten years would be needed. sd: from day to day, of one day's value; 0 or more.
[[nodiscard]] std::optional<int> daysNeeded(double sd, const Precision& precision);

/// How days vary, from history: what a plan rests on.
struct DayVariation {
  double mean = 0.0;
  double sd = 0.0;
  /// Correlation of a day with the next, over pairs of known days; a day that follows the one before tells
  /// less. 0 below ten pairs.
  double lag1 = 0.0;
  std::size_t days = 0;
  /// sd · sqrt((1 + r) / (1 - r)), r the lag-1 correlation where it is above 0: what to plan with
  /// (first-order autoregression, from memory).
  [[nodiscard]] double sdForPlanning() const;
};
/// Nothing below two known days.
[[nodiscard]] std::optional<DayVariation> variationOf(const DailySeries& series);

/// Where pans must stand during the study: each class of food that is fed in a place.
struct PanWanted {
  std::string place{};
  std::string foodClass{};
  std::vector<std::string> foods{};  ///< of that class, so that one of them is put out
  bool operator==(const PanWanted&) const = default;
};
struct StudyPlan {
  int days = 0;
  DayVariation variation{};
  Precision precision{};
  std::vector<std::string> foods{};
  std::vector<PanWanted> pans{};
};
/// bowls: as they will be fed. unchanged: classes that need no pan. Nothing where the precision is out of
/// reach.
[[nodiscard]] std::optional<StudyPlan> planStudy(const DayVariation& variation, const Precision& precision,
                                                 std::span<const FedBowl> bowls,
                                                 std::span<const std::string> unchanged = {});

}  // namespace tarebowl::intake
