// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/code_list.h"
#include "core/store/prepared_statement.h"

#include <soci/soci.h>

#include <deque>
#include <string>
#include <type_traits>
#include <utility>

namespace tarebowl::store {

/// Rows of a query, in the types of the trade (column_types.h). Unlike a statement of SOCI it can be gathered
/// with others (reading.h).
class RowQuery {
 public:
  /// A value for each place, as often as its name stands there.
  template <class... Values>
  RowQuery(Connection& connection, const std::string& sql, const Values&... values)
      : statement_(connection, sql) {
    (bind(values), ...);
  }

  /// The places are those of a list.
  RowQuery(Connection& connection, const std::string& sql, const CodeList& codes)
      : statement_(connection, sql) {
    codes.bindTo(statement_);
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
