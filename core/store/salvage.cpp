// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage.h"

#include "core/store/change_log.h"
#include "core/store/file_opening.h"
#include "core/store/new_file.h"
#include "core/store/opening.h"
#include "core/store/page_finder.h"
#include "core/store/prepared_statement.h"
#include "core/store/sqlite_connection.h"
#include "core/store/sqlite_file.h"
#include "core/store/sqlite_header.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <span>
#include <utility>
#include <vector>

namespace tarebowl::store {

namespace {

namespace fs = std::filesystem;

constexpr std::chrono::milliseconds kPatience{10'000};
constexpr std::size_t kPiece = 1U << 20U;

/// A copy of the damaged file beside the new one, to which the engine has moved what was written last.
class WorkingCopy {
 public:
  WorkingCopy(const fs::path& damaged, const fs::path& copy) : file_(copy) {
    makeOwnFile(file_);
    copyBytes(damaged);
    if (hasOpenLog(damaged)) takeLog(damaged);
  }
  ~WorkingCopy() {
    std::error_code ignored;
    for (const char* tail : {"", "-wal", "-shm", "-journal"}) fs::remove(file_.string() + tail, ignored);
  }
  WorkingCopy(const WorkingCopy&) = delete;
  WorkingCopy& operator=(const WorkingCopy&) = delete;

  [[nodiscard]] const fs::path& file() const { return file_; }
  [[nodiscard]] bool hasLostLog() const { return lostLog_; }

 private:
  void copyBytes(const fs::path& damaged) const {
    const SqliteFile from(damaged);
    std::ofstream to(file_, std::ios::binary);
    std::vector<char> piece(kPiece);
    const std::uint64_t size = from.size();
    for (std::uint64_t at = 0; at < size; at += kPiece) {
      const auto bytes =
          std::span(piece).first(static_cast<std::size_t>(std::min<std::uint64_t>(kPiece, size - at)));
      from.read(at, bytes);
      to.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }
    to.close();
    if (!to) throw StoreError(StoreErrorCode::NoPermission, file_, "cannot be written");
  }

  void takeLog(const fs::path& damaged) {
    std::error_code error;
    fs::copy_file(damaged.string() + "-wal", file_.string() + "-wal", error);
    lostLog_ = true;
    if (error) return;
    try {
      SqliteConnection connection(file_, SqliteConnection::Access::ReadWrite, kPatience);
      lostLog_ = !connection.emptyLog();
    } catch (const StoreError&) {  // NOLINT(bugprone-empty-catch): the report says that it is lost
    }
  }

  fs::path file_;
  bool lostLog_ = false;
};

SoughtColumn::Type typeOf(const std::string& declared) {
  if (declared == "INTEGER") return SoughtColumn::Type::Whole;
  return declared == "REAL" ? SoughtColumn::Type::Real : SoughtColumn::Type::Text;
}

/// As the engine keeps its rows: of a clustered table the columns of its key come first.
SoughtTable soughtIn(soci::session& sql, const std::string& name, bool isClustered) {
  SoughtTable table{.name = name, .isClustered = isClustered};
  const std::string order = isClustered ? "ORDER BY pk = 0, pk, cid" : "ORDER BY cid";
  const soci::rowset<soci::row> rows =
      (sql.prepare
       << "SELECT name, type, CAST(\"notnull\" AS TEXT), CAST(pk AS TEXT) FROM pragma_table_info('" + name +
              "') " + order);
  for (const soci::row& row : rows) {
    SoughtColumn column{.name = row.get<std::string>(0), .type = typeOf(row.get<std::string>(1))};
    const bool isKey = row.get<std::string>(3) != "0";
    column.isRowid = !isClustered && isKey && column.type == SoughtColumn::Type::Whole;
    column.mayBeMissing = row.get<std::string>(2) == "0" && !isKey;
    table.columns.push_back(std::move(column));
  }
  return table;
}

/// In the order in which they were made, so that what others refer to comes first.
std::vector<SoughtTable> tablesOf(soci::session& sql) {
  std::vector<std::pair<std::string, bool>> names;
  const soci::rowset<soci::row> rows =
      (sql.prepare << "SELECT name, CASE WHEN sql LIKE '%WITHOUT ROWID' THEN 'clustered' ELSE '' END FROM "
                      "sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY rowid");
  for (const soci::row& row : rows)
    names.emplace_back(row.get<std::string>(0), !row.get<std::string>(1).empty());
  std::vector<SoughtTable> tables;
  tables.reserve(names.size());
  for (const auto& [name, isClustered] : names) tables.push_back(soughtIn(sql, name, isClustered));
  return tables;
}

std::string insertInto(const SoughtTable& table) {
  std::string columns;
  std::string places;
  for (const SoughtColumn& column : table.columns) {
    columns += (columns.empty() ? "" : ", ") + column.name;
    places += places.empty() ? "?" : ", ?";
  }
  return fmt::format("INSERT INTO {} ({}) VALUES ({})", table.name, columns, places);
}

void bind(PreparedStatement& statement, int place, const PageValue& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value))
    statement.bind(place, static_cast<long long>(*number));
  else if (const auto* real = std::get_if<double>(&value))
    statement.bind(place, *real);
  else if (const auto* text = std::get_if<std::string>(&value))
    statement.bind(place, *text);
  else
    statement.bindNull(place);
}

/// False where a rule of the collection refuses the row: most often, that what it belongs to is there.
bool put(PreparedStatement& statement, const FoundRow& row) {
  for (std::size_t i = 0; i < row.values.size(); ++i) bind(statement, static_cast<int>(i) + 1, row.values[i]);
  try {
    statement.run();
  } catch (const soci::soci_error& error) {
    if (!isRefusal(error)) throw;
    return false;
  }
  return true;
}

SalvagedTable fill(Connection& connection, PageFile& pages, const SoughtTable& table,
                   const FoundTable& found) {
  SalvagedTable told{.name = table.name, .unreadable = found.unreadable, .whereUnknown = found.whereUnknown};
  PreparedStatement statement(connection, insertInto(table));
  for (const std::uint32_t page : found.pages) {
    for (const FoundRow& row : rowsOn(pages, page, table)) {
      const bool isIn = put(statement, row);
      ++(isIn ? told.saved : told.leftOut);
      if (isIn && row.isDoubtful) ++told.doubtful;
    }
  }
  return told;
}

/// The schema that the damaged file has: as it states, or the newest where that cannot be read.
int versionOf(const PageFile& pages, const fs::path& damaged) {
  const int newest = currentSchemaVersion();
  const int stated = static_cast<int>(pages.statedVersion().value_or(0));
  if (stated > newest)
    throw StoreError(StoreErrorCode::TooNew, damaged, "was written by a newer Tarebowl; nothing was copied");
  return stated > 0 ? stated : newest;
}

void log(Collection::Inner& inner, const fs::path& damaged, const Author& author) {
  record(inner, {.author = author,
                 .verb = "salvage",
                 .subject = "collection",
                 .after = '"' + damaged.filename().string() + '"'});
}

SalvageReport copyRows(const WorkingCopy& copy, const fs::path& damaged, const fs::path& made,
                       const Author& author) {
  PageFile pages(copy.file());
  const auto steps = migrations();
  const auto version = static_cast<std::size_t>(versionOf(pages, damaged));
  Collection::Inner inner(newFile(made));
  raiseSchema(inner.connection, steps.first(version));
  const std::vector<SoughtTable> tables = tablesOf(inner.sql());
  FoundTables found = findTables(pages, tables);
  if (!found.hasAny)
    throw StoreError(StoreErrorCode::NotACollection, damaged, "nothing of a collection can be found in it");
  SalvageReport report{.pagesWithoutTable = found.pagesWithoutTable, .newestWritesLost = copy.hasLostLog()};
  WriteTransaction transaction(inner.connection);
  for (const SoughtTable& table : tables)
    report.tables.push_back(fill(inner.connection, pages, table, found.tables[table.name]));
  log(inner, damaged, author);
  transaction.commit();
  raiseSchema(inner.connection, steps);
  return report;
}

}  // namespace

bool SalvageReport::isWhole() const {
  return pagesWithoutTable == 0 && !newestWritesLost && std::ranges::all_of(tables, &SalvagedTable::isWhole);
}

SalvageReport salvage(const fs::path& damaged, const fs::path& fresh, const Author& author) {
  std::error_code ignored;
  if (!fs::is_regular_file(damaged, ignored))
    throw StoreError(StoreErrorCode::NotFound, damaged, "there is no such file");
  if (fs::exists(fresh, ignored)) throw StoreError(StoreErrorCode::AlreadyThere, fresh, "is there already");
  const fs::path made = fresh.string() + "-new";
  fs::remove(made, ignored);
  try {
    const WorkingCopy copy(damaged, fresh.string() + "-damaged");
    SalvageReport report = guarded(made, [&] { return copyRows(copy, damaged, made, author); });
    putInPlace(made, fresh);
    return report;
  } catch (const StoreError&) {
    for (const char* tail : {"", "-wal", "-shm", "-journal"}) fs::remove(made.string() + tail, ignored);
    throw;
  }
}

}  // namespace tarebowl::store
