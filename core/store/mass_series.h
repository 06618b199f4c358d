// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/animal/body_mass.h"
#include "core/store/collection.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace tarebowl::store {

/// Whose masses are read: animals, or groups as a whole.
struct Weighed {
  const char* column = nullptr;        ///< of mass_reading, which says of whom a reading is
  std::string those{};                 ///< the query of them, as `code`, each once
  std::optional<std::string> value{};  ///< of the one place that the query has, where it has one
};

/// By codes; one of which no reading counts is not in it.
using MassSeries = std::map<std::string, std::vector<animal::MassReading>>;

/// What animal::massOn looks at of each on a day: the last days' readings, and the newest day's where that is
/// longer ago. Of a reading no more is read than its day and its mass. Throws StoreError.
[[nodiscard]] MassSeries readingsThatCount(const Collection& collection, quantity::Date day,
                                           const Weighed& weighed);

[[nodiscard]] std::optional<animal::CurrentMass> massIn(const MassSeries& series, const std::string& code,
                                                        quantity::Date day);

}  // namespace tarebowl::store
