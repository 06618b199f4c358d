// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/record_table.h"

#include <optional>
#include <string>
#include <vector>

/// Rows as what the world sees of them.
namespace tarebowl::store {

/// Answer: Stored<Id, Record>.
template <class Answer, class... Values>
[[nodiscard]] std::vector<Answer> readAll(const Collection& collection, const std::string& condition,
                                          const Values&... values) {
  using Record = decltype(Answer::record);
  using Id = decltype(Answer::id);
  return guarded(collection.file(), [&] {
    std::vector<Answer> found;
    for (Row<Record>& row : loadRows<Record>(collection.inner(), condition, values...))
      found.push_back({Id{row.id}, row.revision, std::move(row.record)});
    return found;
  });
}

template <class Answer, class... Values>
[[nodiscard]] std::optional<Answer> readOne(const Collection& collection, const std::string& condition,
                                            const Values&... values) {
  auto found = readAll<Answer>(collection, condition, values...);
  if (found.empty()) return std::nullopt;
  return std::move(found.front());
}

template <class Answer>
[[nodiscard]] std::optional<Answer> readByCode(const Collection& collection, const std::string& code) {
  return readOne<Answer>(collection, "WHERE code = :code", code);
}

template <class Answer, class Id>
[[nodiscard]] std::optional<Answer> readById(const Collection& collection, Id id) {
  return readOne<Answer>(collection, "WHERE id = :id", static_cast<long long>(id));
}

}  // namespace tarebowl::store
