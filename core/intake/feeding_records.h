// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/date.h"
#include "core/quantity/quantity.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// What the kitchen writes down of a feeding day: bowls, what went in, what came back, control pans, swaps.
/// Grams are of the whole bowl, as fed.
namespace tarebowl::intake {

/// One bowl, for a group on a day. The day is that of the sheet, also where it is weighed after midnight.
struct BowlKey {
  std::string group{};  ///< animal::Group::code
  quantity::Date day{};
  int bowl = 1;  ///< 1, 2 … in the order of the sheet
  auto operator<=>(const BowlKey&) const = default;
};

/// One food in one bowl.
struct ItemKey {
  BowlKey bowl{};
  int item = 1;  ///< 1, 2 … in the order of the sheet
  auto operator<=>(const ItemKey&) const = default;
};

/// Who wrote something down, and when: ISO 8601 UTC to the second, "2026-11-25T07:30:00Z".
struct Signed {
  std::string who{};
  std::string at{};
  bool operator==(const Signed&) const = default;
};

/// What a bowl was found to weigh for one food. The first entry stays for good.
struct Weighing {
  quantity::Grams actual{};
  Signed by{};
  /// Why this goes before the entry before it; empty for the first one and for one that was made elsewhere
  /// at the same time (`second`).
  std::string correction{};
  /// Another person's or machine's first entry for a line that had one already. Kept and told; it does not
  /// count until somebody corrects to it.
  bool second = false;
  bool operator==(const Weighing&) const = default;
};

/// What is known of a leftover. Estimated: a part of a mixed remainder, by eye. Spilled, Stolen (by a
/// cage-mate): some of it left the bowl and was not eaten by those it was for.
enum class LeftoverKind { Weighed, AllEaten, NotWeighed, Estimated, Spilled, Stolen };

struct Leftover {
  LeftoverKind kind = LeftoverKind::NotWeighed;
  std::optional<quantity::Grams> left{};  ///< found in the bowl, as weighed, not corrected for water
  std::optional<quantity::Grams> lost{};  ///< spilled or stolen, where somebody can say how much
  Signed by{};
  std::string correction{};  ///< as in Weighing
  bool second = false;
  bool operator==(const Leftover&) const = default;
};

/// A food of a bowl.
struct BowlItem {
  int item = 1;
  std::string food{};  ///< food::Food::code
  quantity::Grams planned{};
  std::string preparation{};
  std::optional<std::int64_t> swap{};  ///< the swap that took it out, or that brought it in
  bool swappedOut = false;             ///< another food is in its place: nothing to weigh
  std::vector<Weighing> weighings{};   ///< the first entry first
  std::vector<Leftover> leftovers{};   ///< the first entry first
  bool operator==(const BowlItem&) const = default;
};

/// What is left of all foods together, where they cannot be told apart.
struct MixedRemainder {
  quantity::Grams left{};
  Signed by{};
  std::string correction{};
  bool second = false;
  bool operator==(const MixedRemainder&) const = default;
};

/// A bowl as the sheet of its day says it, and what became of it.
struct Bowl {
  BowlKey key{};
  std::string meal{};  ///< "morning"; empty: whenever
  std::string label{};
  std::string diet{};  ///< diet::NamedDiet::code it is fed by; empty: none
  int version = 0;     ///< of that diet; 0: none
  int animals = 1;     ///< who share it
  std::vector<BowlItem> items{};
  std::vector<MixedRemainder> remainders{};  ///< the first entry first
  bool operator==(const Bowl&) const = default;
};

/// The entry that counts: the last one that is not another's second. Nothing where there is none.
template <class Entry>
[[nodiscard]] std::optional<Entry> entryThatCounts(const std::vector<Entry>& entries) {
  const auto last = std::find_if(entries.rbegin(), entries.rend(), [](const Entry& e) { return !e.second; });
  return last == entries.rend() ? std::nullopt : std::optional(*last);
}

/// The same food in the same room, out of the animals' reach: what water it gains or loses.
struct ControlPan {
  std::string place{};  ///< "lemur house, inside"
  quantity::Date day{};
  std::string food{};                    ///< food::Food::code; empty where it stands for a class
  std::string foodClass{};               ///< food group, "leafy vegetable"; empty where it is one food
  quantity::Grams start{};               ///< above 0
  std::optional<quantity::Grams> end{};  ///< may be more than at the start; nothing: it still stands there
  std::string startAt{};                 ///< ISO 8601 UTC; may be empty
  std::string endAt{};
  std::string who{};
  std::string note{};
  bool operator==(const ControlPan&) const = default;
};

/// Who may decide on a swap, by house rule.
enum class SwapApproval { KeeperDecides, Waiting, Approved, Refused };

struct GivenInstead {
  std::string food{};
  quantity::Grams amount{};  ///< of the bowl
  bool operator==(const GivenInstead&) const = default;
};

/// One food of one bowl replaced by others.
struct SwapMade {
  ItemKey instead{};   ///< what was not given
  std::string food{};  ///< its food
  std::vector<GivenInstead> given{};
  std::string why{};  ///< "not delivered"
  Signed by{};
  SwapApproval approval = SwapApproval::KeeperDecides;
  Signed decidedBy{};      ///< where somebody was asked
  std::string decision{};  ///< why it was approved or refused
  bool operator==(const SwapMade&) const = default;
};

/// Whether a food is in the house. The collection's food::Food::inStock says so.
struct Stock {
  std::string food{};
  bool onHand = true;
  bool operator==(const Stock&) const = default;
};

}  // namespace tarebowl::intake
