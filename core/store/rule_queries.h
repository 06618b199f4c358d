// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/write.h"

#include <string>

/// What the rules of the collection ask of it.
namespace tarebowl::store {

[[nodiscard]] inline bool isThere(Collection::Inner& inner, const std::string& fromWhere,
                                  const std::string& value) {
  long long count = 0;
  inner.sql() << "SELECT COUNT(*) FROM " + fromWhere, soci::use(value), soci::into(count);
  return count > 0;
}

[[nodiscard]] inline bool codeIsThere(Collection::Inner& inner, const std::string& table,
                                      const std::string& code) {
  return isThere(inner, table + " WHERE code = :code", code);
}

inline void refuseRow(Collection::Inner& inner, const std::string& fromWhere, const std::string& value,
                      const std::string& why) {
  if (isThere(inner, fromWhere, value)) refuse(inner, why);
}

inline void refuseTakenCode(Collection::Inner& inner, const std::string& table, const std::string& what,
                            const std::string& code, long long self) {
  long long id = 0;
  inner.sql() << "SELECT id FROM " + table + " WHERE code = :code", soci::use(code), soci::into(id);
  if (inner.sql().got_data() && id != self)
    refuse(inner, "there is another " + what + " with the code " + code);
}

}  // namespace tarebowl::store
