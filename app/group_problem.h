// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/streams.h"
#include "core/diet/problem.h"
#include "core/quantity/date.h"

#include <string>

namespace tarebowl::app {

/// Foods that a group of a collection is to be fed.
struct FoodsForGroup {
  std::string collection;  ///< file
  std::string group;       ///< code
  std::string foods;       ///< as app/food_codes.h reads them
};

/// The problem of the group's targets on the day. What could not be counted, and what may not be given, is
/// told beside it. Throws UsageError and store::StoreError.
[[nodiscard]] diet::BalanceProblem groupProblemOf(const FoodsForGroup& words, quantity::Date day,
                                                  const Streams& streams);

}  // namespace tarebowl::app
