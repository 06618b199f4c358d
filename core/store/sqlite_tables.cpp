// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/sqlite_tables.h"

#include "core/store/opening.h"
#include "core/store/prepared_statement.h"
#include "core/store/sqlite_connection.h"

namespace tarebowl::store {

namespace {

ColumnType typeOf(const std::string& declared) {
  if (declared == "INTEGER") return ColumnType::Whole;
  return declared == "REAL" ? ColumnType::Real : ColumnType::Text;
}

TableShape shapeOf(Connection& connection, const std::string& name) {
  TableShape shape{.name = name};
  PreparedStatement columns(connection, "SELECT name, type FROM pragma_table_info(?) ORDER BY cid");
  columns.bind(1, name);
  while (columns.step()) shape.columns.push_back({columns.text(0), typeOf(columns.text(1))});
  PreparedStatement key(connection, "SELECT name FROM pragma_table_info(?) WHERE pk > 0 ORDER BY pk");
  key.bind(1, name);
  while (key.step()) shape.key.push_back(key.text(0));
  return shape;
}

}  // namespace

std::vector<TableShape> tablesOf(std::span<const Migration> steps) {
  SqliteConnection made(":memory:", Connection::Access::ReadWrite, std::chrono::milliseconds(0));
  raiseSchema(made, steps);
  return guarded(made.file(), [&] {
    std::vector<std::string> names;
    PreparedStatement tables(
        made,
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' "
        "ORDER BY rowid");
    while (tables.step()) names.push_back(tables.text(0));
    std::vector<TableShape> shapes;
    shapes.reserve(names.size());
    for (const std::string& name : names) shapes.push_back(shapeOf(made, name));
    return shapes;
  });
}

}  // namespace tarebowl::store
