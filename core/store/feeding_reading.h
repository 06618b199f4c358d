// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/intake/feeding_records.h"
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

/// What counts of one food of one bowl: corrected where it was corrected. Numbers of foods are those of
/// fedFoods().
struct FedLine {
  std::int64_t group = 0;  ///< GroupId
  quantity::Date day{};
  int bowl = 0;
  int item = 0;
  int animals = 1;
  std::int64_t food = 0;
  quantity::Grams planned{};
  std::optional<quantity::Grams> offered{};  ///< nothing: not weighed in
  std::optional<intake::LeftoverKind> leftover{};
  std::optional<quantity::Grams> left{};
  std::optional<quantity::Grams> lost{};
};

/// Line by line in the order of groups, days and bowls, without what was swapped out; nothing is kept in
/// memory but corrections. group: all where none is named.
void readFedLines(const Collection& collection, const std::optional<std::string>& group, quantity::Date from,
                  quantity::Date to, const std::function<void(const FedLine&)>& take);
/// A food of lines by its number.
struct FedFood {
  std::int64_t number = 0;
  std::string code{};
};
[[nodiscard]] std::vector<FedFood> fedFoods(const Collection& collection);

/// The rule of weighing of the house, or the default.
[[nodiscard]] intake::ToleranceRule toleranceRule(const Collection& collection);

}  // namespace tarebowl::store
