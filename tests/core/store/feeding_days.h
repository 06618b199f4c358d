// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/store/swap_verbs.h"
#include "tests/core/store/diets.h"

/// Invented feeding days.
namespace tarebowl::store {

/// A herd with an approved diet and the foods kale, endive and pellet-a, and the sheet of one day: a bowl of
/// the family with 120 g kale and 30.5 g pellet, a bowl of the pair with 40 g kale.
class Kitchen : public FedHerd {
 public:
  Kitchen();

  const quantity::Date today = day("2026-11-25");
  [[nodiscard]] intake::ItemKey item(const std::string& group, int number) const {
    return {{group, today, 1}, number};
  }
  [[nodiscard]] intake::Bowl bowl(const std::string& group) const {
    return findBowl(collection, {group, today, 1}).value();
  }
  [[nodiscard]] std::vector<intake::Bowl> planned() const;
  Kept weigh(const intake::ItemKey& item, double grams, const Author& author = kKeeper) {
    const WeightRead weight{item, quantity::Grams(grams)};
    return weighIn(collection, {&weight, 1}, author).at(0);
  }
  Kept leave(const LeftoverFound& found, const Author& author = kKeeper) {
    return noteLeftovers(collection, {&found, 1}, author).at(0);
  }
};

}  // namespace tarebowl::store
