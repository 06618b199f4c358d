// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/mass_series.h"

#include "core/store/column_types.h"
#include "core/store/opening.h"
#include "core/store/row_query.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

/// The last days' readings, and of those without any the newest day's. Each of the two looks at no more of
/// ten years than it takes: the newest day of each is asked by itself and once (DISTINCT keeps PostgreSQL
/// from asking it for every reading).
std::string readingsOf(const Weighed& weighed) {
  return fmt::format(
      "SELECT {0} AS code, on_day, mass_kg, id FROM mass_reading WHERE {0} IN ({1}) AND excluded IS NULL AND "
      "on_day BETWEEN :first AND :until UNION ALL SELECT code, on_day, mass_kg, id FROM (SELECT DISTINCT "
      "code, (SELECT MAX(on_day) FROM mass_reading AS earlier WHERE earlier.{0} = code AND earlier.excluded "
      "IS NULL AND earlier.on_day <= :day) AS newest FROM ({1}) AS asked) AS series JOIN mass_reading ON {0} "
      "= code AND on_day = newest WHERE excluded IS NULL AND newest < :first ORDER BY on_day, id",
      weighed.column, weighed.those);
}

}  // namespace

MassSeries readingsThatCount(const Collection& collection, quantity::Date day, const Weighed& weighed) {
  const quantity::Date first{std::chrono::sys_days(day) - std::chrono::days(animal::kDaysOfMass - 1)};
  return guarded(collection.file(), [&] {
    Connection& connection = collection.inner().connection;
    const std::string text = readingsOf(weighed);
    RowQuery rows = weighed.value
                        ? RowQuery(connection, text, *weighed.value, first, day, day, *weighed.value, first)
                        : RowQuery(connection, text, first, day, day, first);
    MassSeries series;
    std::string code;
    for (animal::MassReading reading; rows.next(code, reading.on, reading.mass);)
      series[code].push_back(reading);
    return series;
  });
}

std::optional<animal::CurrentMass> massIn(const MassSeries& series, const std::string& code,
                                          quantity::Date day) {
  const auto place = series.find(code);
  return place == series.end() ? std::nullopt : animal::massOn(place->second, day);
}

}  // namespace tarebowl::store
