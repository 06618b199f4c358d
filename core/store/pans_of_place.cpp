// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_reading.h"
#include "core/store/opening.h"
#include "core/store/prepared_statement.h"

#include <fmt/format.h>

namespace tarebowl::store {

namespace {

/// which: the place, with one place for `of`.
std::vector<intake::ControlPan> pansWhere(const Collection& collection, const char* which,
                                          const std::string& of, quantity::Date from, quantity::Date to) {
  return guarded(collection.file(), [&] {
    PreparedStatement read(
        collection.inner().connection,
        fmt::format(
            "SELECT day, food, food_class, start_g, end_g, place_name FROM control_pan WHERE place_name "
            "= {} AND day BETWEEN ? AND ? ORDER BY day, id",
            which));
    const std::string first = quantity::isoDate(from);
    const std::string last = quantity::isoDate(to);
    read.bind(1, of);
    read.bind(2, first);
    read.bind(3, last);
    std::vector<intake::ControlPan> pans;
    while (read.step()) {
      const auto day = quantity::parseDate(read.text(0));
      if (!day) continue;
      intake::ControlPan& pan = pans.emplace_back();
      pan.place = read.text(5);
      pan.day = *day;
      pan.food = read.text(1);
      pan.foodClass = read.text(2);
      pan.start = quantity::Grams(read.real(3));
      if (!read.isNull(4)) pan.end = quantity::Grams(read.real(4));
    }
    return pans;
  });
}

}  // namespace

std::vector<intake::ControlPan> pansOfPlace(const Collection& collection, const std::string& place,
                                            quantity::Date from, quantity::Date to) {
  return pansWhere(collection, "?", place, from, to);
}

std::vector<intake::ControlPan> pansOfGroup(const Collection& collection, const std::string& group,
                                            quantity::Date from, quantity::Date to) {
  return pansWhere(collection, "(SELECT section FROM animal_group WHERE code = ?)", group, from, to);
}

}  // namespace tarebowl::store
