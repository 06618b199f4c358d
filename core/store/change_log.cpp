// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/change_log.h"

#include "core/store/opening.h"
#include "core/store/row_query.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

constexpr const char* kChanges =
    "SELECT id, at, who, verb, subject, subject_id, state_before, state_after FROM change_log";

/// What one row is read into; the names of SQL's columns in their order.
struct Row {
  long long id = 0;
  std::string at;
  std::string who;
  std::string verb;
  std::string subject;
  std::optional<long long> subjectId;
  std::optional<std::string> before;
  std::optional<std::string> after;

  [[nodiscard]] Change change() const { return {id, {who, at}, verb, subject, subjectId, before, after}; }
};

/// condition: what of the changes is read and in which order, with one number in it.
std::vector<Change> readAll(Collection::Inner& collection, std::string_view condition, long long argument) {
  Row row;
  RowQuery rows(collection.connection, fmt::format("{} {}", kChanges, condition), argument);
  std::vector<Change> changes;
  while (rows.next(row.id, row.at, row.who, row.verb, row.subject, row.subjectId, row.before, row.after))
    changes.push_back(row.change());
  return changes;
}

}  // namespace

std::vector<Change> newestChanges(const Collection& collection, std::size_t most) {
  return guarded(collection.file(), [&] {
    return readAll(collection.inner(), "ORDER BY id DESC LIMIT :most", static_cast<long long>(most));
  });
}

std::optional<Change> findChange(const Collection& collection, std::int64_t number) {
  return guarded(collection.file(), [&]() -> std::optional<Change> {
    auto found = readAll(collection.inner(), "WHERE id = :id", number);
    if (found.empty()) return std::nullopt;
    return std::move(found.front());
  });
}

std::int64_t record(Collection::Inner& collection, const Change& change) {
  soci::session& sql = collection.sql();
  long long number = 0;
  sql << "SELECT COALESCE(MAX(id), 0) + 1 FROM change_log", soci::into(number);
  std::optional<long long> subjectId;
  if (change.subjectId) subjectId = *change.subjectId;
  sql << "INSERT INTO change_log (id, at, who, verb, subject, subject_id, state_before, state_after) "
         "VALUES (:id, :at, :who, :verb, :subject, :subject_id, :before, :after)",
      soci::use(number), soci::use(change.author.at), soci::use(change.author.who), soci::use(change.verb),
      soci::use(change.subject), soci::use(subjectId), soci::use(change.before), soci::use(change.after);
  collection.connection.noteOwnEntry(number);
  return number;
}

}  // namespace tarebowl::store
