// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/counted_bowl.h"
#include "core/intake/tolerance.h"
#include "core/store/collection.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Reading feeding days. Every call throws StoreError; what a call returns is a snapshot.
namespace tarebowl::store {

/// Of a section, group by group by their codes; all sections where none is named.
[[nodiscard]] std::vector<intake::Bowl> bowlsOfDay(const Collection& collection, quantity::Date day,
                                                   const std::optional<std::string>& section = std::nullopt);
/// Both days are in it.
[[nodiscard]] std::vector<intake::Bowl> bowlsOfGroup(const Collection& collection, const std::string& group,
                                                     quantity::Date from, quantity::Date to);
/// One bowl with everything in it; nothing where the sheet has none.
[[nodiscard]] std::optional<intake::Bowl> findBowl(const Collection& collection, const intake::BowlKey& key);

/// What counts of every bowl, in the order of groups, days and bowls; one bowl after another, so that years
/// of them take no more room than a day. group: all where none is named.
void readCountedBowls(const Collection& collection, const std::optional<std::string>& group,
                      quantity::Date from, quantity::Date to,
                      const std::function<void(const intake::CountedBowl&)>& take);

/// The first and the last day of these on which the group has a bowl; nothing where it has none.
struct FedSpan {
  quantity::Date first{};
  quantity::Date last{};
};
[[nodiscard]] std::optional<FedSpan> fedSpan(const Collection& collection, const std::string& group,
                                             quantity::Date from, quantity::Date to);

/// The rule of weighing of the house, or the default.
[[nodiscard]] intake::ToleranceRule toleranceRule(const Collection& collection);

}  // namespace tarebowl::store
