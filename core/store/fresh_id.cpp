// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/fresh_id.h"

#include "core/store/food_rows.h"
#include "core/store/imported_range.h"

#include <algorithm>

namespace tarebowl::store {

namespace {

/// The last that an import had which was taken back; of one that stands, the table itself tells.
long long lastTakenBack(Collection::Inner& inner, std::int64_t ImportedRange::*last) {
  long long number = 0;
  const soci::rowset<std::string> imports =
      (inner.sql().prepare << "SELECT state_before FROM change_log WHERE subject = 'table' AND "
                              "state_before IS NOT NULL AND state_after IS NULL");
  for (const std::string& import : imports)
    number = std::max(number, static_cast<long long>(importedRange(import).*last));
  return number;
}

}  // namespace

long long freshId(Collection::Inner& inner, const std::string& table, const std::string& subject) {
  long long logged = 0;
  inner.sql() << "SELECT COALESCE(MAX(subject_id), 0) + 1 FROM change_log WHERE subject = :subject",
      soci::use(subject), soci::into(logged);
  return std::max(logged, nextId(inner.sql(), table));
}

long long freshFoodId(Collection::Inner& inner) {
  return std::max(freshId(inner, "food", "food"), lastTakenBack(inner, &ImportedRange::lastFood) + 1);
}

long long freshSampleId(Collection::Inner& inner) {
  return std::max(freshId(inner, "sample", "sample"), lastTakenBack(inner, &ImportedRange::lastSample) + 1);
}

}  // namespace tarebowl::store
