// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/diet_version.h"
#include "core/store/diet_reading.h"
#include "core/store/swap_verbs.h"

#include <cstddef>
#include <map>
#include <string>
#include <vector>

/// What is due on a day, for those who open the program. Throws StoreError.
namespace tarebowl::transfer {

/// A section's kitchen on the day.
struct SectionToday {
  std::string section{};
  std::size_t bowls = 0;    ///< to prepare
  std::size_t lines = 0;    ///< foods to weigh in
  std::size_t weighed = 0;  ///< of them
  std::size_t leftoversMissing =
      0;  ///< bowls of the day before that were weighed in, and nobody said what was left
  std::size_t groupsWithoutBowl = 0;
};

/// A version that was submitted and not decided on.
struct WaitingDiet {
  store::VersionLine version{};
  std::string name{};  ///< of the diet
  std::string group{};
};

struct DayOverview {
  quantity::Date day{};
  std::vector<SectionToday> sections{};
  struct Group {
    std::string name{};
    std::string section{};
  };
  std::map<std::string, Group> groups{};          ///< by their codes
  std::vector<store::StoredSwap> swapsMade{};     ///< on the day
  std::vector<store::StoredSwap> swapsWaiting{};  ///< of any day
  std::vector<WaitingDiet> dietsWaiting{};
  std::vector<store::StoredControlPan> pansThatStand{};  ///< of any day to this one, the oldest first
  /// What the foods of swaps and pans are called, by their codes; the code itself where it is in the
  /// collection no more.
  std::map<std::string, std::string> foodNames{};
};

[[nodiscard]] DayOverview readDayOverview(const store::Collection& collection, quantity::Date day);

}  // namespace tarebowl::transfer
