// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/named_places.h"

#include <cstddef>

namespace tarebowl::store {

std::string withBarePlaces(std::string_view sql) {
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

}  // namespace tarebowl::store
