// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/column_types.h"
#include "core/store/food_rows.h"
#include "core/store/opening.h"
#include "core/store/row_query.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <type_traits>
#include <unordered_map>
#include <utility>
#include <vector>

/// Things that are told once how they stand in a table, and then read, written and logged alike. All of it
/// runs inside guarded().
namespace tarebowl::store {

/// Specialised for each thing: kName, the table; columns(thing, visit), which calls visit(name, field) for
/// each column; and, where it has lists, parts(thing, visit), which calls visit(table, list) for each. A part
/// that may be missing, a std::optional, is a list of one at most.
template <class T>
struct Table;

template <class T>
concept HasParts = requires(T& thing) {
  Table<T>::parts(thing, [](const char*, auto&) {});
};

/// A thing to read into.
template <class T>
[[nodiscard]] T blank() {
  if constexpr (requires { Table<T>::blank(); })
    return Table<T>::blank();
  else
    return T{};
}

template <class Part>
[[nodiscard]] const std::vector<Part>& asList(const std::vector<Part>& parts) {
  return parts;
}
template <class Part>
[[nodiscard]] std::vector<Part> asList(const std::optional<Part>& part) {
  return part ? std::vector<Part>{*part} : std::vector<Part>{};
}
template <class Part>
void assignList(std::vector<Part>& list, std::vector<Part> parts) {
  list = std::move(parts);
}
template <class Part>
void assignList(std::optional<Part>& part, std::vector<Part> parts) {
  part = parts.empty() ? std::nullopt : std::optional(std::move(parts.front()));
}

template <class T>
struct Row {
  long long id = 0;
  int revision = 0;
  T record = blank<T>();
};

template <class T>
[[nodiscard]] std::vector<std::string> columnsOf() {
  std::vector<std::string> names;
  const T thing = blank<T>();
  Table<T>::columns(thing, [&](const char* name, const auto&) { names.emplace_back(name); });
  return names;
}

/// The same, joined by commas: put together once.
template <class T>
[[nodiscard]] const std::string& columnList() {
  static const std::string list = fmt::format("{}", fmt::join(columnsOf<T>(), ", "));
  return list;
}

inline void run(soci::statement& statement, const std::string& query) {
  statement.alloc();
  statement.prepare(query, soci::details::st_one_time_query);  // on a server: one way there and back
  statement.define_and_bind();
}

template <class Part>
using PartsByOwner = std::unordered_map<long long, std::vector<Part>>;

/// The parts of all owners that a query picks ("SELECT id FROM …", or their numbers), in one way there and
/// back: a way for each of them would take longer than all that is read on it.
template <class Part, class... Values>
[[nodiscard]] PartsByOwner<Part> loadParts(Collection::Inner& inner, const std::string& table,
                                           const std::string& owners, const Values&... values) {
  long long owner = 0;
  Part part = blank<Part>();
  RowQuery rows(inner.connection,
                fmt::format("SELECT owner_id, {} FROM {} WHERE owner_id IN ({}) ORDER BY owner_id, place",
                            columnList<Part>(), table, owners),
                values...);
  PartsByOwner<Part> parts;
  while (rows.step()) {
    rows.read(owner);
    Table<Part>::columns(part, [&](const char*, auto& field) { rows.read(field); });
    parts[owner].push_back(part);
  }
  return parts;
}

/// Gives each row the parts of the place-th of its lists.
template <class T, class List>
void assignParts(std::vector<Row<T>>& rows, std::size_t place,
                 PartsByOwner<typename List::value_type> parts) {
  for (Row<T>& row : rows) {
    std::size_t at = 0;
    Table<T>::parts(row.record, [&]<class Own>(const char*, Own& list) {
      if constexpr (std::is_same_v<Own, List>)
        if (at == place) assignList(list, std::move(parts[row.id]));
      ++at;
    });
  }
}

template <class T, class... Values>
void loadAllParts(Collection::Inner& inner, std::vector<Row<T>>& rows, const std::string& owners,
                  const Values&... values) {
  std::size_t place = 0;
  T kind = blank<T>();
  Table<T>::parts(kind, [&]<class List>(const char* table, List&) {
    assignParts<T, List>(rows, place++,
                         loadParts<typename List::value_type>(inner, table, owners, values...));
  });
}

template <class T>
[[nodiscard]] std::string numbersOf(const std::vector<Row<T>>& rows) {
  std::vector<long long> numbers;
  numbers.reserve(rows.size());
  for (const Row<T>& row : rows) numbers.push_back(row.id);
  return fmt::format("{}", fmt::join(numbers, ", "));
}

template <class Part>
void insertParts(Collection::Inner& inner, const std::string& table, long long owner,
                 const std::vector<Part>& parts) {
  const auto names = columnsOf<Part>();
  const std::string query = fmt::format("INSERT INTO {} (owner_id, place, {}) VALUES (:owner, :place, :{})",
                                        table, fmt::join(names, ", "), fmt::join(names, ", :"));
  int place = 0;
  for (const Part& part : parts) {
    ++place;
    soci::statement statement(inner.sql());
    statement.exchange(soci::use(owner));
    statement.exchange(soci::use(place));
    Table<Part>::columns(part, [&](const char*, const auto& field) { statement.exchange(soci::use(field)); });
    run(statement, query);
    statement.execute(true);
  }
}

/// The rows that a condition picks ("WHERE … ORDER BY …"), with a value for each of its places.
template <class T, class... Values>
[[nodiscard]] std::vector<Row<T>> loadRows(Collection::Inner& inner, const std::string& condition,
                                           const Values&... values) {
  Row<T> row;
  std::vector<Row<T>> found;
  const AskedTogether together(inner.connection);
  RowQuery rows(
      inner.connection,
      fmt::format("SELECT id, revision, {} FROM {} {}", columnList<T>(), Table<T>::kName, condition),
      values...);
  while (rows.step()) {
    rows.read(row.id);
    rows.read(row.revision);
    Table<T>::columns(row.record, [&](const char*, auto& field) { rows.read(field); });
    found.push_back(row);
  }
  if constexpr (HasParts<T>) {
    if (found.empty() && !together.lacksAnswers()) return found;
    // By their numbers, where they are known and few: else the condition is worked out again for each list.
    constexpr std::size_t kFew = 1'000;
    if (!inner.connection.gathers() && found.size() <= kFew)
      loadAllParts(inner, found, numbersOf(found));
    else
      loadAllParts(inner, found, fmt::format("SELECT id FROM {} {}", Table<T>::kName, condition), values...);
  }
  together.end();
  return found;
}

template <class T, class... Values>
[[nodiscard]] std::optional<Row<T>> loadRow(Collection::Inner& inner, const std::string& condition,
                                            const Values&... values) {
  auto found = loadRows<T>(inner, condition, values...);
  if (found.empty()) return std::nullopt;
  return std::move(found.front());
}

template <class T>
[[nodiscard]] std::optional<Row<T>> loadById(Collection::Inner& inner, long long id) {
  return loadRow<T>(inner, "WHERE id = :id", id);
}

template <class T>
void insertPartsOf(Collection::Inner& inner, long long id, const T& record) {
  if constexpr (HasParts<T>)
    Table<T>::parts(
        record, [&](const char* table, const auto& list) { insertParts(inner, table, id, asList(list)); });
}

template <class T>
void deletePartsOf(Collection::Inner& inner, long long id, const T& record) {
  if constexpr (HasParts<T>)
    Table<T>::parts(record, [&](const char* table, const auto&) {
      inner.sql() << std::string("DELETE FROM ") + table + " WHERE owner_id = :owner", soci::use(id);
    });
}

template <class T>
void insertRow(Collection::Inner& inner, long long id, int revision, const T& record) {
  const auto names = columnsOf<T>();
  soci::statement statement(inner.sql());
  statement.exchange(soci::use(id));
  statement.exchange(soci::use(revision));
  Table<T>::columns(record, [&](const char*, const auto& field) { statement.exchange(soci::use(field)); });
  run(statement, fmt::format("INSERT INTO {} (id, revision, {}) VALUES (:id, :revision, :{})",
                             Table<T>::kName, fmt::join(names, ", "), fmt::join(names, ", :")));
  statement.execute(true);
  insertPartsOf(inner, id, record);
}

/// The columns of a part as text, for asking whether two are the same.
template <class Part>
[[nodiscard]] std::vector<std::optional<std::string>> textsOf(const Part& part) {
  std::vector<std::optional<std::string>> texts;
  Table<Part>::columns(part, [&]<class Field>(const char*, const Field& field) {
    typename soci::type_conversion<Field>::base_type value{};
    soci::indicator state = soci::i_ok;
    soci::type_conversion<Field>::to_base(field, value, state);
    texts.push_back(state == soci::i_ok ? std::optional(fmt::format("{}", value)) : std::nullopt);
  });
  return texts;
}

template <class List>
[[nodiscard]] bool sameParts(const List& some, const List& others) {
  const auto one = asList(some);
  const auto other = asList(others);
  return std::ranges::equal(one, other,
                            [](const auto& a, const auto& b) { return textsOf(a) == textsOf(b); });
}

/// Lists that stay as they were are not written again.
template <class T>
void updatePartsOf(Collection::Inner& inner, long long id, const T& before, const T& after) {
  std::vector<const void*> lists;
  Table<T>::parts(before, [&](const char*, const auto& list) { lists.push_back(&list); });
  std::size_t at = 0;
  Table<T>::parts(after, [&]<class List>(const char* table, const List& list) {
    if (sameParts(*static_cast<const List*>(lists[at++]), list)) return;
    inner.sql() << std::string("DELETE FROM ") + table + " WHERE owner_id = :owner", soci::use(id);
    insertParts(inner, table, id, asList(list));
  });
}

template <class T>
void updateRow(Collection::Inner& inner, long long id, int revision, const T& before, const T& after) {
  std::string assignments;
  soci::statement statement(inner.sql());
  statement.exchange(soci::use(revision));
  Table<T>::columns(after, [&](const char* name, const auto& field) {
    assignments += fmt::format(", {0} = :{0}", name);
    statement.exchange(soci::use(field));
  });
  statement.exchange(soci::use(id));
  run(statement,
      fmt::format("UPDATE {} SET revision = :revision{} WHERE id = :id", Table<T>::kName, assignments));
  statement.execute(true);
  if constexpr (HasParts<T>) updatePartsOf(inner, id, before, after);
}

template <class T>
void removeRow(Collection::Inner& inner, long long id, const T& record) {
  deletePartsOf(inner, id, record);
  inner.sql() << std::string("DELETE FROM ") + Table<T>::kName + " WHERE id = :id", soci::use(id);
}

}  // namespace tarebowl::store
