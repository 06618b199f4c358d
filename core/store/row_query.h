// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/prepared_statement.h"

#include <soci/soci.h>

#include <cstddef>
#include <deque>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace tarebowl::store {

/// ":code" as "?": what stands between quotes stays.
[[nodiscard]] inline std::string withBarePlaces(std::string_view sql) {
  const auto isOfWord = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || (c >= '0' && c <= '9');
  };
  std::string made;
  made.reserve(sql.size());
  bool quoted = false;
  std::size_t taken = 0;  // up to here: most of it is neither quote nor place, and is taken at once
  for (std::size_t i = sql.find_first_of("':"); i != sql.npos; i = sql.find_first_of("':", i + 1)) {
    if (sql[i] == '\'') quoted = !quoted;
    if (sql[i] != ':' || quoted || i + 1 == sql.size() || !isOfWord(sql[i + 1])) continue;
    made.append(sql, taken, i - taken);
    made += '?';
    while (i + 1 < sql.size() && isOfWord(sql[i + 1])) ++i;
    taken = i + 1;
  }
  made.append(sql, taken);
  return made;
}

/// Rows of a query, in the types of the trade (column_types.h). Unlike a statement of SOCI it can be gathered
/// with others (reading.h).
class RowQuery {
 public:
  /// A value for each place, as often as its name stands there.
  template <class... Values>
  RowQuery(Connection& connection, std::string_view sql, const Values&... values)
      : statement_(connection, withBarePlaces(sql)) {
    (bind(values), ...);
  }

  /// The next row into as many fields as it has columns; false after the last one.
  template <class... Fields>
  [[nodiscard]] bool next(Fields&... fields) {
    if (!step()) return false;
    (read(fields), ...);
    return true;
  }
  /// The same column by column.
  [[nodiscard]] bool step() {
    column_ = 0;
    return statement_.step();
  }
  template <class Field>
  void read(Field& field) {
    using Base = typename soci::type_conversion<Field>::base_type;
    Base value{};
    const bool isThere = !statement_.isNull(column_);
    if (isThere) {
      if constexpr (std::is_integral_v<Base>)
        value = static_cast<Base>(statement_.number(column_));
      else if constexpr (std::is_floating_point_v<Base>)
        value = statement_.real(column_);
      else
        value = statement_.text(column_);
    }
    ++column_;
    soci::type_conversion<Field>::from_base(value, isThere ? soci::i_ok : soci::i_null, field);
  }

 private:
  template <class Value>
  void bind(const Value& value) {
    typename soci::type_conversion<Value>::base_type in{};
    soci::indicator state = soci::i_ok;
    soci::type_conversion<Value>::to_base(value, in, state);
    ++places_;
    if (state == soci::i_null)
      statement_.bindNull(places_);
    else if constexpr (std::is_integral_v<decltype(in)>)
      statement_.bind(places_, static_cast<long long>(in));
    else
      statement_.bind(places_, keep(std::move(in)));
  }
  double keep(double value) { return value; }
  /// A text must live as long as the statement runs.
  const std::string& keep(std::string text) { return texts_.emplace_back(std::move(text)); }

  PreparedStatement statement_;
  std::deque<std::string> texts_;
  int places_ = 0;
  int column_ = 0;
};

}  // namespace tarebowl::store
