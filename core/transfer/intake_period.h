// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/diet/problem.h"
#include "core/intake/daily_intake.h"
#include "core/intake/eaten.h"
#include "core/store/group_reading.h"
#include "core/transfer/intake_reader.h"

#include <optional>
#include <string>
#include <vector>

namespace tarebowl::transfer {

/// What a group was fed over some days and what it ate of it: a snapshot of the collection.
struct IntakePeriod {
  store::KnownGroup group{};  ///< on the last day
  quantity::Date from{};
  quantity::Date to{};
  std::vector<intake::FedBowl> fed{};      ///< in order of days and bowls
  std::vector<intake::EatenBowl> eaten{};  ///< one for each of them
  /// Every food of the bowls that the collection knows, and the targets that the group is fed by on the last
  /// day (none where none are in force). Foods have no limits here: it is to judge by.
  diet::BalanceProblem problem{};
  std::vector<std::string> unknownFoods{};  ///< codes of the others
  std::size_t pans = 0;
  bool invented = false;
};

/// Both days are in it. Pans are those whose place is the group's section, a week around the days too, to
/// borrow from. A reading is as fine as the finest of the group's readings of the period: a scale that showed
/// 12.3 g shows tenths. Nothing where there is no such group. Throws StoreError.
[[nodiscard]] std::optional<IntakePeriod> readIntake(const store::Collection& collection,
                                                     const std::string& group, quantity::Date from,
                                                     quantity::Date to);

/// Within a job that reads together: asks ahead for it.
void askForPeriod(const store::Collection& collection, const std::string& group, quantity::Date from,
                  quantity::Date to);

/// What its foods bring of a nutrient.
[[nodiscard]] intake::Contents contentsOf(const IntakePeriod& period, food::NutrientId nutrient);

}  // namespace tarebowl::transfer
