// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/mass_series.h"

#include "core/store/animal_tables.h"
#include "core/store/record_reading.h"

#include <fmt/format.h>

namespace tarebowl::store {

MassSeries readingsThatCount(const Collection& collection, quantity::Date day, const Weighed& weighed) {
  const quantity::Date since{std::chrono::sys_days(day) - std::chrono::days(animal::kDaysOfMass)};
  // The newest day of each by itself and once (DISTINCT keeps PostgreSQL from asking it for every reading),
  // so that no more than these readings are looked at of ten years.
  const std::string condition = fmt::format(
      "WHERE id IN (SELECT counted.id FROM (SELECT DISTINCT code, (SELECT MAX(on_day) FROM mass_reading AS "
      "earlier WHERE earlier.{0} = code AND earlier.excluded IS NULL AND earlier.on_day <= :day) AS newest "
      "FROM ({1}) AS asked) AS series JOIN mass_reading AS counted ON counted.{0} = series.code WHERE "
      "counted.excluded IS NULL AND counted.on_day <= :until AND counted.on_day >= CASE WHEN series.newest > "
      ":since THEN :first ELSE series.newest END) ORDER BY on_day, id",
      weighed.column, weighed.those);
  const quantity::Date first{std::chrono::sys_days(since) + std::chrono::days(1)};
  const auto found = weighed.value
                         ? readAll<StoredMass>(collection, condition, day, *weighed.value, day, since, first)
                         : readAll<StoredMass>(collection, condition, day, day, since, first);
  MassSeries series;
  for (const StoredMass& mass : found)
    series[mass.record.individual ? *mass.record.individual : mass.record.group.value_or("")].push_back(
        mass.record.reading);
  return series;
}

std::optional<animal::CurrentMass> massIn(const MassSeries& series, const std::string& code,
                                          quantity::Date day) {
  const auto place = series.find(code);
  return place == series.end() ? std::nullopt : animal::massOn(place->second, day);
}

}  // namespace tarebowl::store
