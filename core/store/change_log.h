// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/collection.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tarebowl::store {

/// One line of the collection's history: nobody can change or remove it.
struct Change {
  std::int64_t number = 0;  ///< 1, 2, 3 …
  Author author{};
  std::string verb{};                       ///< "edit food", "import table" …
  std::string subject{};                    ///< "food", "sample", "table", "collection"
  std::optional<std::int64_t> subjectId{};  ///< of the food or sample
  std::optional<std::string> before{};      ///< its state as JSON; missing where it was not there
  std::optional<std::string> after{};
};

/// The newest changes first, at most so many. Throws StoreError.
[[nodiscard]] std::vector<Change> newestChanges(const Collection& collection, std::size_t most);
[[nodiscard]] std::optional<Change> findChange(const Collection& collection, std::int64_t number);

/// Adds an entry inside the running transaction and returns its number. For the verbs only.
std::int64_t record(Collection::Inner& collection, const Change& change);

}  // namespace tarebowl::store
