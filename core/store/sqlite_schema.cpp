// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_schema.h"

#include "core/store/opening.h"
#include "core/store/sqlite_connection.h"
#include "core/store/sqlite_dialect.h"

#include <fmt/format.h>
#include <soci/soci.h>

#include <algorithm>
#include <sstream>
#include <string_view>

namespace tarebowl::store {

namespace {

/// The table that an index or a trigger is of: what follows its first ON.
std::string tableOf(const SchemaLine& line) {
  constexpr std::string_view kOn = " ON ";
  const auto on = line.text.find(kOn);
  if (on == std::string::npos) return {};
  const auto begin = on + kOn.size();
  return line.text.substr(begin, line.text.find_first_of(" (\n", begin) - begin);
}

/// Follows statements that make and drop as SQLite writes them down: the text of what is made is kept as it
/// stands, and a table that is given another name has that in quotes (https://www.sqlite.org/schematab.html).
class Writer {
 public:
  /// False where it cannot be followed.
  [[nodiscard]] bool follow(const std::string& statement) {
    std::istringstream words(statement);
    std::string verb;
    std::string kind;
    std::string name;
    words >> verb;
    if (verb == "INSERT" || verb == "UPDATE" || verb == "DELETE") return true;
    words >> kind >> name;
    if (verb == "CREATE") return make(kind, name, statement);
    if (verb == "DROP" && kind == "TABLE") return drop(name);
    std::string change;
    std::string to;
    std::string newName;
    words >> change >> to >> newName;
    return verb == "ALTER" && kind == "TABLE" && change == "RENAME" && to == "TO" && rename(name, newName);
  }
  [[nodiscard]] SqliteSchema take() { return std::move(schema_); }

 private:
  bool make(const std::string& kind, const std::string& name, const std::string& statement) {
    if (kind == "TABLE")
      schema_.push_back({"table", name, statement});
    else if (kind == "INDEX")
      schema_.push_back({"index", name, statement});
    else if (kind == "TRIGGER")
      schema_.push_back({"trigger", name, statement});
    else
      return false;
    return true;
  }
  bool drop(const std::string& table) {
    return std::erase_if(schema_, [&](const SchemaLine& line) {
             return line.kind == "table" ? line.name == table : tableOf(line) == table;
           }) > 0;
  }
  bool rename(const std::string& table, const std::string& to) {
    const std::string begin = "CREATE TABLE " + table + " ";
    const auto line = std::ranges::find_if(
        schema_, [&](const SchemaLine& one) { return one.kind == "table" && one.name == table; });
    const bool isNamedElsewhere = std::ranges::any_of(schema_, [&](const SchemaLine& one) {
      return one.name != table && one.text.find(table) != std::string::npos;
    });
    if (line == schema_.end() || isNamedElsewhere || !line->text.starts_with(begin)) return false;
    line->text = fmt::format("CREATE TABLE \"{}\" {}", to, line->text.substr(begin.size()));
    line->name = to;
    return true;
  }

  SqliteSchema schema_;
};

}  // namespace

SqliteSchema schemaIn(soci::session& sql) {
  SqliteSchema schema;
  const soci::rowset<soci::row> rows =
      (sql.prepare << "SELECT COALESCE(type, ''), COALESCE(name, ''), COALESCE(sql, '') FROM sqlite_master");
  for (const soci::row& row : rows)
    schema.push_back({row.get<std::string>(0), row.get<std::string>(1), row.get<std::string>(2)});
  return schema;
}

SqliteSchema schemaMadeBy(std::span<const Migration> steps) {
  SqliteConnection made(":memory:", SqliteConnection::Access::ReadWrite, std::chrono::milliseconds(0));
  raiseSchema(made, steps);
  return schemaIn(made.sql());
}

std::optional<SqliteSchema> schemaWrittenBy(std::span<const Migration> steps) {
  Writer writer;
  for (const Migration& step : steps)
    for (const std::string& statement : toSqlite(step.sql))
      if (!writer.follow(statement)) return std::nullopt;
  return writer.take();
}

}  // namespace tarebowl::store
