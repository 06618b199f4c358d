// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/series.h"

#include <cstddef>
#include <span>
#include <vector>

namespace tarebowl::intake {

/// When a day's intake counts as a drop against the animal's own history. House rule, no source; the median
/// and MAD are those of food/robust.h. A false alarm is raised on about one day in 800
/// where intake scatters normally (drops_test.cpp).
struct DropRule {
  std::size_t historyDays = 56;  ///< the window of history, ending the day before
  std::size_t leastKnown = 14;   ///< known days that must be in it
  std::size_t averagedDays = 1;  ///< 3: the mean of three days against earlier means of three days
  double spreads = 3.5;          ///< so many robust standard deviations below the median …
  double leastShare = 0.15;      ///< … and at least so large a part of the median below it
  bool sameWeekdayOnly = false;  ///< against the same day of the week (with a longer window)
};

/// A stretch of days on which the rule held; days that are missing do not end it.
struct Drop {
  quantity::Date from{};
  quantity::Date until{};
  std::size_t days = 0;   ///< on which the rule held
  double lowest = 0.0;    ///< of the (averaged) values
  double usual = 0.0;     ///< the median of the history on the lowest day
  double spread = 0.0;    ///< its robust standard deviation
  std::size_t known = 0;  ///< days of history behind it
  [[nodiscard]] double share() const { return usual == 0.0 ? 0.0 : 1.0 - lowest / usual; }
};

/// In order. While a drop lasts its own days are not history: what is usual stays what it was before, for as
/// long as the window holds enough of it.
[[nodiscard]] std::vector<Drop> dropsIn(const DailySeries& series, const DropRule& rule = {});

}  // namespace tarebowl::intake
