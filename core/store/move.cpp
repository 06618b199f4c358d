// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/move.h"

#include "core/store/backup.h"
#include "core/store/change_log.h"
#include "core/store/file_opening.h"
#include "core/store/former_collection.h"
#include "core/store/opening.h"
#include "core/store/server_address.h"
#include "core/store/server_opening.h"
#include "core/store/table_rows.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr const char* kVerb = "move collection";

/// A collection on its way from one place to another.
class Relocation {
 public:
  Relocation(Connection& from, const MoveOptions& options)
      : from_(from), options_(options), tables_(tablesOf(migrations())) {}

  void copyInto(Collection::Inner& target) {
    for (const TableShape& table : tables_) {
      guarded(from_.file(), [&] {
        TableRows rows(from_, table);
        const auto filling = guarded(target.file(), [&] { return target.connection.fill(table); });
        for (TableRow row; rows.next(row);) guarded(target.file(), [&] { filling->add(row); });
        guarded(target.file(), [&] { filling->end(); });
      });
    }
  }

  /// Row by row. The target may hold one entry of the log more: that it was moved.
  [[nodiscard]] std::vector<MovedTable> compareWith(Connection& target) {
    std::vector<MovedTable> told;
    for (const TableShape& table : tables_) {
      told.push_back(compare(target, table));
      if (options_.progress) options_.progress(told.back());
    }
    return told;
  }

 private:
  [[nodiscard]] MovedTable compare(Connection& target, const TableShape& table) {
    MovedTable told{.name = table.name};
    RowChecksum here;
    RowChecksum there;
    TableRows mine(from_, table);
    TableRows theirs(target, table);
    TableRow row;
    TableRow other;
    while (guarded(from_.file(), [&] { return mine.next(row); })) {
      const bool isThere = guarded(target.file(), [&] { return theirs.next(other); });
      if (!isThere || row != other) refuseOther(target, table, told.rows);
      here.add(row);
      there.add(other);
      ++told.rows;
    }
    if (guarded(target.file(), [&] { return theirs.next(other); }))
      if (!isEntryOfMove(table, other) || guarded(target.file(), [&] { return theirs.next(other); }))
        refuseOther(target, table, told.rows);
    if (here.value() != there.value()) refuseOther(target, table, told.rows);
    told.checksum = here.value();
    return told;
  }

  [[nodiscard]] static bool isEntryOfMove(const TableShape& table, const TableRow& row) {
    return table.name == "change_log" &&
           std::ranges::any_of(row, [](const ColumnValue& value) { return value == ColumnValue(kVerb); });
  }

  [[noreturn]] void refuseOther(const Connection& target, const TableShape& table, std::size_t row) const {
    throw StoreError(
        StoreErrorCode::AlreadyThere, target.file(),
        fmt::format("holds another collection than {} (row {} of {} differs); nothing was changed",
                    from_.file().string(), row + 1, table.name));
  }

  Connection& from_;
  const MoveOptions& options_;
  std::vector<TableShape> tables_;
};

std::optional<Collection> alreadyAt(const fs::path& target, const std::string& at,
                                    const OpenOptions& options) {
  std::error_code ignored;
  if (!isServerAddress(target) && !fs::exists(target, ignored)) return std::nullopt;
  try {
    return Collection::open(target, at, options);
  } catch (const StoreError& error) {
    if (!isServerAddress(target) || error.code() != StoreErrorCode::NotACollection) throw;
    return std::nullopt;
  }
}

/// Whoever has it open is told at the next write that it is gone. The lock is held until it is.
std::string setAside(Connection& from, WriteTransaction& lock, const std::string& at) {
  if (!isServerAddress(from.file())) return setFileAside(from.file(), at, "moved").string();
  const std::string name = schemaNamedAfter(kMovedAway, at);
  guarded(from.file(), [&] {
    from.sql() << "ALTER SCHEMA tarebowl RENAME TO " + name;
    lock.commit();
  });
  return "the schema " + name + " of " + from.file().string();
}

}  // namespace

MoveReport moveCollection(const fs::path& source, const fs::path& target, const Author& author,
                          const MoveOptions& options) {
  const OpenOptions& opening = options.opening;
  if (source == target)
    throw StoreError(StoreErrorCode::AlreadyThere, target, "is where the collection lies already");
  const Collection moved = Collection::open(source, author.at, opening);
  Connection& from = moved.inner().connection;
  WriteTransaction lock(from);
  Relocation relocation(from, options);
  MoveReport report;
  if (const auto there = alreadyAt(target, author.at, opening)) {
    report.tables = relocation.compareWith(there->inner().connection);
    report.wasThere = true;
  } else {
    const auto fill = [&](Collection::Inner& made) {
      WriteTransaction transaction(made.connection);
      relocation.copyInto(made);
      report.tables = relocation.compareWith(made.connection);
      record(made, {.author = author,
                    .verb = kVerb,
                    .subject = "collection",
                    .before = '"' + source.filename().string() + '"',
                    .after = '"' + target.filename().string() + '"'});
      transaction.commit();
    };
    if (isServerAddress(target))
      createServer(target, opening, migrations(), fill);
    else
      createFile(target, migrations(), fill);
  }
  report.aside = setAside(from, lock, author.at);
  return report;
}

}  // namespace tarebowl::store
