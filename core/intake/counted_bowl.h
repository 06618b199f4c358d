// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"

namespace tarebowl::intake {

/// What counts of a food of a bowl: corrected where it was corrected, and nothing on who wrote it when. Years
/// of it are read at once.
struct CountedLeftover {
  LeftoverKind kind = LeftoverKind::NotWeighed;
  std::optional<quantity::Grams> left{};
  std::optional<quantity::Grams> lost{};
  bool operator==(const CountedLeftover&) const = default;
};

struct CountedItem {
  std::string food{};  ///< food::Food::code
  quantity::Grams planned{};
  std::optional<quantity::Grams> weighed{};
  std::optional<CountedLeftover> leftover{};
  bool swappedIn = false;  ///< given in place of another
  bool operator==(const CountedItem&) const = default;
};

/// Without what was swapped out.
struct CountedBowl {
  std::string group{};
  quantity::Date day{};
  std::string label{};
  std::string diet{};  ///< it is fed by; empty: none
  int animals = 1;
  std::optional<quantity::Grams> remainder{};  ///< of all foods together
  std::vector<CountedItem> items{};
  bool operator==(const CountedBowl&) const = default;
};

[[nodiscard]] CountedBowl counted(const Bowl& bowl);

}  // namespace tarebowl::intake
