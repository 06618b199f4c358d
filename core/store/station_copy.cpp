// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/station_copy.h"

#include "core/animal/body_mass.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/kitchen_delivery.h"
#include "core/store/new_file.h"
#include "core/store/reading.h"
#include "core/store/server_address.h"
#include "core/store/sqlite_tables.h"
#include "core/store/station_outbox.h"
#include "core/store/table_rows.h"
#include "core/store/write.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <chrono>
#include <cstdlib>
#include <map>
#include <set>
#include <string_view>

namespace tarebowl::store {

namespace {

struct CopiedTable {
  TableShape shape{};
  std::vector<TableRow> rows{};
};

}  // namespace

struct ServerRows::Content {
  StationCopy copy{};
  std::vector<CopiedTable> tables{};
};

namespace {

namespace fs = std::filesystem;
using quantity::Date;

/// Leftovers of a long weekend are still noted, and tomorrow's food is thawed (house rule, no source).
constexpr std::chrono::days kDaysBack{4};
constexpr std::chrono::days kDaysAhead{2};

/// FNV-1a: the same on every machine, unlike std::hash.
std::uint64_t hashOf(const std::string& text) {
  std::uint64_t hash = 0xcbf29ce484222325;
  for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
  return hash;
}

const std::set<std::string>& kitchenTables() {
  static const std::set<std::string> kTables{
      "feeding_word", "fed_food",           "feeding_bowl", "feeding_line", "swap_made",
      "swap_given",   "feeding_correction", "control_pan",  "food_lot",     "tolerance_rule"};
  return kTables;
}

/// What no sheet is made of: laboratory values, health, the log, what was decided on as files, and what is of
/// a desk alone.
const std::set<std::string>& leftOut() {
  static const std::set<std::string> kTables{
      "change_log",        "sample",           "sample_value",     "observation",   "observation_score",
      "observation_blood", "observation_file", "faeces_collected", "faeces_value",  "mass_former",
      "condition_reading", "diet_decided",     "station_copy",     "station_entry", "station_sent"};
  return kTables;
}

/// Of what grows with the years, the days around today; and what masses animal::massOn looks at.
std::map<std::string, std::string> conditionsFor(const StationCopy& copy) {
  const std::string days =
      fmt::format("day BETWEEN {} AND {}", intake::dayNumber(copy.from), intake::dayNumber(copy.until));
  const std::string from = quantity::isoDate(copy.from);
  const std::string ofDay = fmt::format("day >= '{}'", from);
  const std::string standing = fmt::format("until_day >= '{}'", from);
  const std::string weighed =
      quantity::isoDate(Date(std::chrono::sys_days(copy.from) - std::chrono::days(animal::kDaysOfMass)));
  std::string masses = fmt::format("on_day >= '{}'", weighed);
  for (const char* who : {"individual", "group_code"})
    masses += fmt::format(
        " OR ({0}, on_day) IN (SELECT {0}, MAX(on_day) FROM mass_reading WHERE excluded IS NULL AND {0} IS "
        "NOT "
        "NULL GROUP BY {0})",
        who);
  return {{"feeding_bowl", days},
          {"feeding_line", days},
          {"feeding_correction", days},
          {"swap_made", ofDay},
          {"swap_given", fmt::format("owner_id IN (SELECT id FROM swap_made WHERE {})", ofDay)},
          {"control_pan", fmt::format("{} OR end_g IS NULL", ofDay)},
          {"rotation", standing},
          {"rotation_cell", fmt::format("owner_id IN (SELECT id FROM rotation WHERE {})", standing)},
          {"mass_reading", masses}};
}

using Key = std::vector<long long>;

Key keyIn(const TableRow& row, const std::vector<std::size_t>& columns) {
  Key key;
  for (const std::size_t column : columns) key.push_back(std::get<long long>(row[column]));
  return key;
}

/// Rows that are gone or changed, and rows that are new or changed. Both sides stand in the order of the key.
struct Difference {
  std::vector<Key> gone{};
  std::vector<const TableRow*> come{};
};

Difference differenceOf(Connection& copy, const TableShape& shape, const std::vector<TableRow>& wanted) {
  Difference difference;
  const auto columns = keyColumns(shape);
  TableRows rows(copy, shape);
  auto next = wanted.begin();
  for (TableRow row; rows.next(row);) {
    const Key key = keyIn(row, columns);
    for (; next != wanted.end() && keyIn(*next, columns) < key; ++next) difference.come.push_back(&*next);
    const bool isThere = next != wanted.end() && keyIn(*next, columns) == key;
    if (!isThere || *next != row) difference.gone.push_back(key);
    if (!isThere) continue;
    if (*next != row) difference.come.push_back(&*next);
    ++next;
  }
  for (; next != wanted.end(); ++next) difference.come.push_back(&*next);
  return difference;
}

/// Takes the triggers off that keep what is append-only from changing in a collection: a copy of it forgets
/// the days that are over. Puts them back as they were.
class WithoutKeeping {
 public:
  explicit WithoutKeeping(soci::session& sql) : sql_(sql) {
    const soci::rowset<soci::row> triggers =
        (sql.prepare << "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name");
    for (const soci::row& trigger : triggers)
      triggers_.emplace_back(trigger.get<std::string>(0), trigger.get<std::string>(1));
    for (const auto& [name, text] : triggers_) sql << "DROP TRIGGER " + name;
  }
  void putBack() {
    for (const auto& [name, text] : triggers_) sql_ << text;
  }

 private:
  soci::session& sql_;
  std::vector<std::pair<std::string, std::string>> triggers_;
};

void noteCopy(Collection::Inner& inner, const StationCopy& copy) {
  inner.sql() << "DELETE FROM station_copy";
  const int from = intake::dayNumber(copy.from);
  const int until = intake::dayNumber(copy.until);
  inner.sql() << "INSERT INTO station_copy (id, server, from_day, until_day, taken_at) VALUES (1, :server, "
                 ":from_day, :until_day, :taken)",
      soci::use(copy.server), soci::use(from), soci::use(until), soci::use(copy.takenAt);
}

/// Where the server does not take it as it is, that will be told when it is sent.
void writeAgain(Collection& station) {
  for (const WaitingEntry& waiting : entriesOf(station)) {
    if (waiting.state != EntryState::Waiting || !waiting.entry) continue;
    try {
      (void)writeDown(station, *waiting.entry);
    } catch (const StoreError& error) {
      if (error.code() != StoreErrorCode::Refused) throw;
    }
  }
}

/// In a folder of its own, so that two who make it at once do not meet; then it is put in its place as a
/// whole.
void makeStation(const fs::path& file, const Author& author) {
  std::error_code error;
  if (fs::create_directories(file.parent_path(), error))
    fs::permissions(file.parent_path(), fs::perms::owner_all, error);
  std::string folder = (file.parent_path() / "new-XXXXXX").string();
  if (::mkdtemp(folder.data()) == nullptr)
    throw StoreError(StoreErrorCode::NoPermission, file, "cannot be made here");
  const fs::path made = fs::path(folder) / file.filename();
  try {
    (void)Collection::create(made, author);
    fs::permissions(made, fs::perms::owner_read | fs::perms::owner_write, error);
    putInPlace(made, file);
  } catch (const StoreError& failed) {
    fs::remove_all(folder, error);
    if (failed.code() != StoreErrorCode::AlreadyThere) throw;  // else another window was faster
  }
  fs::remove_all(folder, error);
}

std::vector<TableRow> rowsIn(const Collection& server, const TableShape& shape,
                             const std::string& condition) {
  TableRows rows(server.inner().connection, shape, condition);
  std::vector<TableRow> read;
  for (TableRow row; rows.next(row);) read.push_back(row);
  return read;
}

std::vector<CopiedTable> tablesIn(const Collection& server, const StationCopy& copy, CopyExtent extent) {
  auto conditions = conditionsFor(copy);
  std::vector<CopiedTable> tables;
  for (TableShape& shape : tablesOf(migrations())) {
    const bool isWanted =
        extent == CopyExtent::All ? !leftOut().contains(shape.name) : kitchenTables().contains(shape.name);
    if (isWanted) tables.push_back({.shape = std::move(shape)});
  }
  const auto rowsOf = [&](const CopiedTable& table) {
    return rowsIn(server, table.shape, conditions[table.shape.name]);
  };
  for (const CopiedTable& table : tables) askAhead(server, [&] { return rowsOf(table); });
  for (CopiedTable& table : tables) table.rows = rowsOf(table);
  return tables;
}

}  // namespace

fs::path stationFolder() {
  const auto named = [](const char* variable) {
    const char* const value = std::getenv(variable);  // NOLINT(concurrency-mt-unsafe): nobody sets any
    return fs::path(value != nullptr ? value : "");
  };
  const fs::path data = named("XDG_DATA_HOME");
  return (data.is_absolute() ? data : named("HOME") / ".local" / "share") / "tarebowl" / "desks";
}

fs::path stationFile(const fs::path& folder, const fs::path& address) {
  const std::string whole = addressOf(placeOf(address)).string();
  std::string name;
  for (const char c : databaseOf(address))
    if (std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == '_') name += c;
  return folder / fmt::format("{}-{:016x}.desk", name.empty() ? "collection" : name, hashOf(whole));
}

Collection openStation(const fs::path& file, const Author& author) {
  std::error_code ignored;
  if (!fs::exists(file, ignored)) makeStation(file, author);
  return Collection::open(file, author.at);
}

std::optional<StationCopy> stationCopy(const Collection& station) {
  return guarded(station.file(), [&]() -> std::optional<StationCopy> {
    StationCopy copy;
    int from = 0;
    int until = 0;
    soci::session& sql = station.inner().sql();
    sql << "SELECT server, from_day, until_day, taken_at FROM station_copy", soci::into(copy.server),
        soci::into(from), soci::into(until), soci::into(copy.takenAt);
    if (!sql.got_data()) return std::nullopt;
    copy.from = intake::dayOfNumber(from);
    copy.until = intake::dayOfNumber(until);
    return copy;
  });
}

ServerRows ServerRows::read(Collection& server, Date today, CopyExtent extent, const std::string& at) {
  auto content = std::make_shared<Content>();
  content->copy = {.server = server.file().string(),
                   .from = Date(std::chrono::sys_days(today) - kDaysBack),
                   .until = Date(std::chrono::sys_days(today) + kDaysAhead),
                   .takenAt = at};
  server.inner().connection.refuseLost();
  content->tables = readTogether(server, [&](const Collection& there) {
    return guarded(there.file(), [&] { return tablesIn(there, content->copy, extent); });
  });
  ServerRows read;
  read.content_ = std::move(content);
  return read;
}

void takeCopy(Collection& station, const ServerRows& rows) {
  write(station, [&](Collection::Inner& inner) {
    Connection& connection = inner.connection;
    WithoutKeeping loose(inner.sql());
    inner.sql() << "PRAGMA defer_foreign_keys = ON";  // until all tables are as they are to be
    for (const CopiedTable& table : rows.content_->tables) {
      const Difference difference = differenceOf(connection, table.shape, table.rows);
      TableEraser eraser(connection, table.shape);
      for (const Key& key : difference.gone) eraser.remove(key);
      TableWriter writer(connection, table.shape);
      for (const TableRow* const row : difference.come) writer.add(*row);
    }
    noteCopy(inner, rows.content_->copy);
    loose.putBack();
    inner.components.forget();
    writeAgain(station);
    return true;
  });
}

}  // namespace tarebowl::store
