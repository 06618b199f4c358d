// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/transfer/day_overview.h"
#include "ui/shared/state_mark.h"

#include <QString>

#include <cstddef>
#include <vector>

namespace tarebowl::ui {

/// Where a row of today leads.
enum class TodayPlace { Kitchen, Leftovers, Pans, Swap, SwapDecision, Diet, Nowhere };

/// One thing that is due, or done, as a sentence.
struct TodayRow {
  Mark mark = Mark::Met;
  QString text{};
  TodayPlace place = TodayPlace::Kitchen;
  QString section{};      ///< of Kitchen, Leftovers and Pans
  std::size_t index = 0;  ///< of the swap, diet or pan in its list of the overview
};

struct TodayCard {
  QString heading{};
  std::vector<TodayRow> rows{};
};

/// A card a section, then pans that still stand, then swaps, then what waits for a decision; a card without a
/// row is left out.
[[nodiscard]] std::vector<TodayCard> todayCards(const transfer::DayOverview& overview);

}  // namespace tarebowl::ui
