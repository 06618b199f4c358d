// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/record_table.h"

#include <nlohmann/json.hpp>

#include <string>

/// The state of a thing as the change log keeps it: its columns, and its lists under the names of their
/// tables. Revisions are not part of it: going back to a state is an edit of its own.
namespace tarebowl::store {

using Json = nlohmann::ordered_json;

template <class T>
[[nodiscard]] Json columnsToJson(const T& thing) {
  Json json = Json::object();
  Table<T>::columns(thing, [&]<class Field>(const char* name, const Field& field) {
    typename soci::type_conversion<Field>::base_type value{};
    soci::indicator state = soci::i_ok;
    soci::type_conversion<Field>::to_base(field, value, state);
    if (state == soci::i_ok) json[name] = value;
  });
  return json;
}

template <class T>
[[nodiscard]] T columnsFromJson(const Json& json) {
  T thing = blank<T>();
  Table<T>::columns(thing, [&]<class Field>(const char* name, Field& field) {
    using Value = typename soci::type_conversion<Field>::base_type;
    const auto place = json.find(name);
    const bool missing = place == json.end();
    soci::type_conversion<Field>::from_base(missing ? Value{} : place->get<Value>(),
                                            missing ? soci::i_null : soci::i_ok, field);
  });
  return thing;
}

template <class T>
[[nodiscard]] std::string stateOf(const T& thing) {
  Json json = columnsToJson(thing);
  if constexpr (HasParts<T>)
    Table<T>::parts(thing, [&](const char* table, const auto& list) {
      json[table] = Json::array();
      for (const auto& part : asList(list)) json[table].push_back(columnsToJson(part));
    });
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

template <class T>
[[nodiscard]] T fromState(const std::string& state) {
  const Json json = Json::parse(state);
  T thing = columnsFromJson<T>(json);
  if constexpr (HasParts<T>)
    Table<T>::parts(thing, [&]<class List>(const char* table, List& list) {
      std::vector<typename List::value_type> parts;
      for (const Json& part : json.at(table))
        parts.push_back(columnsFromJson<typename List::value_type>(part));
      assignList(list, std::move(parts));
    });
  return thing;
}

}  // namespace tarebowl::store
