// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
#include "core/intake/tolerance.h"
#include "core/store/collection.h"
#include "core/store/written.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// What the kitchen writes; as all verbs (verbs.h), but for the log and undo. A sheet that is opened and a
/// correction leave one entry in the change log; a weight or a leftover leaves none, because its own line
/// says who wrote it and when. Nothing of it is ever written over or taken back: what was wrong is corrected,
/// and both stay. Author::at must be a time to the second.
namespace tarebowl::store {

/// What became of a sheet that was opened.
struct OpenedSheet {
  std::size_t added = 0;                     ///< bowls
  std::vector<intake::BowlKey> wereThere{};  ///< opened before, perhaps elsewhere; they stay as they are
};
/// Writes the bowls of a day that are not on it yet (intake::sameBowls). Keys other than group and day are
/// given here. Nothing is logged where nothing is added.
OpenedSheet openSheet(Collection& collection, const std::string& section, quantity::Date day,
                      std::span<const intake::Bowl> bowls, const Author& author);

/// Second: somebody had written one before; this one is kept beside it and does not count.
enum class Kept { First, Second };

struct WeightRead {
  intake::ItemKey item{};
  quantity::Grams actual{};  ///< not below 0
};
/// Index for index. All of them or none.
std::vector<Kept> weighIn(Collection& collection, std::span<const WeightRead> weights, const Author& author);
/// Goes before what was written, which stays. A reason must be given.
Written correctWeight(Collection& collection, const WeightRead& weight, const std::string& reason,
                      const Author& author);

struct LeftoverFound {
  intake::ItemKey item{};
  intake::LeftoverKind kind = intake::LeftoverKind::NotWeighed;
  std::optional<quantity::Grams> left{};  ///< of what was weighed or estimated; may be given of the last two
  std::optional<quantity::Grams> lost{};  ///< of what was spilled or stolen
};
std::vector<Kept> noteLeftovers(Collection& collection, std::span<const LeftoverFound> leftovers,
                                const Author& author);
Written correctLeftover(Collection& collection, const LeftoverFound& leftover, const std::string& reason,
                        const Author& author);

/// What is left of all foods of a bowl together.
Kept noteRemainder(Collection& collection, const intake::BowlKey& bowl, quantity::Grams left,
                   const Author& author);
Written correctRemainder(Collection& collection, const intake::BowlKey& bowl, quantity::Grams left,
                         const std::string& reason, const Author& author);

/// The rule of weighing of the house.
Written setToleranceRule(Collection& collection, const intake::ToleranceRule& rule, const Author& author);

}  // namespace tarebowl::store
