// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_reading.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_lines.h"
#include "core/store/feeding_tables.h"
#include "core/store/row_query.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <tuple>
#include <unordered_map>

namespace tarebowl::store {

using intake::Bowl;
using intake::BowlItem;
using intake::BowlKey;
using intake::LeftoverKind;
using quantity::Date;

namespace {

/// Which bowls, by the columns of the table that is read.
constexpr const char* kOfGroup = "group_id = ? AND day BETWEEN ? AND ?";
constexpr const char* kOfSection = "day = ? AND group_id IN (SELECT id FROM animal_group WHERE section = ?)";
constexpr const char* kOfAll = "day = ? AND group_id IN (SELECT id FROM animal_group)";

std::string bowlsWhere(const char* which) {
  return fmt::format(
      "SELECT group_id, day, bowl, meal, label, COALESCE((SELECT diet FROM diet_version WHERE id = "
      "version_id), ''), COALESCE((SELECT number FROM diet_version WHERE id = version_id), 0), animals, "
      "rest_mg, rest_by, rest_at FROM feeding_bowl WHERE {} ORDER BY group_id, day, bowl",
      which);
}

/// A join with the swaps would read all of them for a plan that has to fit every day.
std::string linesWhere(const char* which) {
  return fmt::format(
      "SELECT group_id, day, bowl, item, food, planned_mg, preparation, swap, weighed_mg, weighed_by, "
      "weighed_at, left_kind, left_mg, lost_mg, left_by, left_at, CASE WHEN swap IS NOT NULL THEN (SELECT "
      "item FROM swap_made WHERE swap_made.id = swap) END FROM feeding_line WHERE {} ORDER BY group_id, day, "
      "bowl, item",
      which);
}

std::string correctionsWhere(const char* which) {
  return fmt::format(
      "SELECT group_id, day, bowl, item, kind, second, left_kind, mg, lost_mg, by_word, at, reason FROM "
      "feeding_correction WHERE {} ORDER BY group_id, day, bowl, item, kind, place",
      which);
}

std::optional<quantity::Grams> gramsOrNothing(std::optional<long long> mg) {
  return mg ? std::optional(gramsOf(*mg)) : std::nullopt;
}

/// Reads the bowls that one condition picks, with their lines and corrections.
class SheetReader {
 public:
  using Groups = std::unordered_map<long long, std::string>;  ///< codes by numbers

  SheetReader(Collection::Inner& inner, const char* which)
      : words_(inner),
        foods_(inner),
        bowls_(inner.connection, bowlsWhere(which)),
        lines_(inner.connection, linesWhere(which)),
        corrections_(inner.connection, correctionsWhere(which)) {
    if (!inner.connection.gathers()) return;
    const AskedTogether together(inner.connection);  // the words, before it is known which of them are wanted
    words_.ask();
    foods_.ask();
  }

  template <class... Values>
  void bind(const Values&... values) {
    for (PreparedStatement* statement : {&bowls_, &lines_, &corrections_}) {
      int place = 0;
      (statement->bind(++place, values), ...);
    }
  }

  /// In the order of groups' numbers, days and bowls; those of other groups are left out.
  [[nodiscard]] std::vector<Bowl> read(const Groups& groups) {
    std::vector<Bowl> bowls;
    std::vector<Place> places;
    while (bowls_.step()) {
      const auto group = groups.find(bowls_.number(0));
      if (group == groups.end()) continue;
      bowls.push_back(bowl(group->second));
      places.emplace_back(bowls_.number(0), bowls_.number(1), bowls_.number(2));
    }
    std::size_t at = 0;  // bowls, lines and corrections come in one order
    const auto goTo = [&](const PreparedStatement& row) {
      const Place wanted{row.number(0), row.number(1), row.number(2)};
      while (at < places.size() && places[at] < wanted) ++at;
      return at < places.size() && places[at] == wanted;
    };
    while (lines_.step())
      if (goTo(lines_)) bowls[at].items.push_back(item(bowls[at].key.day));
    at = 0;
    while (corrections_.step())
      if (goTo(corrections_)) correct(bowls[at]);
    return bowls;
  }

 private:
  using Place = std::tuple<long long, long long, long long>;  ///< the group's number, day and bowl

  intake::Signed signedBy(const Date& day, long long who, long long at) {
    return {words_.wordOf(who), intake::timeFrom(day, at)};
  }

  Bowl bowl(const std::string& code) {
    const Date day = intake::dayOfNumber(static_cast<int>(bowls_.number(1)));
    Bowl made{.key = {code, day, static_cast<int>(bowls_.number(2))},
              .meal = words_.wordOf(bowls_.number(3)),
              .label = words_.wordOf(bowls_.number(4)),
              .diet = bowls_.text(5),
              .version = static_cast<int>(bowls_.number(6)),
              .animals = static_cast<int>(bowls_.number(7))};
    if (const auto rest = bowls_.numberOrNull(8))
      made.remainders.push_back(
          {.left = gramsOf(*rest), .by = signedBy(day, bowls_.number(9), bowls_.number(10))});
    return made;
  }

  BowlItem item(const Date& day) {
    BowlItem made{.item = static_cast<int>(lines_.number(3)),
                  .food = foods_.codeOf(lines_.number(4)),
                  .planned = gramsOf(lines_.number(5)),
                  .swappedOut = !lines_.isNull(7) && lines_.numberOrNull(16) == lines_.number(3)};
    if (const auto preparation = lines_.numberOrNull(6)) made.preparation = words_.wordOf(*preparation);
    if (const auto swap = lines_.numberOrNull(7)) made.swap = *swap;
    if (const auto weighed = lines_.numberOrNull(8))
      made.weighings.push_back(
          {.actual = gramsOf(*weighed), .by = signedBy(day, lines_.number(9), lines_.number(10))});
    if (const auto kind = lines_.numberOrNull(11))
      made.leftovers.push_back({.kind = static_cast<LeftoverKind>(*kind),
                                .left = gramsOrNothing(lines_.numberOrNull(12)),
                                .lost = gramsOrNothing(lines_.numberOrNull(13)),
                                .by = signedBy(day, lines_.number(14), lines_.number(15))});
    return made;
  }

  void correct(Bowl& bowl) {
    const auto by = signedBy(bowl.key.day, corrections_.number(9), corrections_.number(10));
    const bool second = corrections_.number(5) == 1;
    const std::string reason = corrections_.text(11);
    const auto mg = corrections_.numberOrNull(7);
    const auto kind = static_cast<EntryKind>(corrections_.number(4));
    if (kind == EntryKind::Remainder) {
      bowl.remainders.push_back({gramsOf(mg.value_or(0)), by, reason, second});
      return;
    }
    const auto found =
        std::ranges::find(bowl.items, static_cast<int>(corrections_.number(3)), &BowlItem::item);
    if (found == bowl.items.end()) return;
    if (kind == EntryKind::Weight)
      found->weighings.push_back({gramsOf(mg.value_or(0)), by, reason, second});
    else
      found->leftovers.push_back({static_cast<LeftoverKind>(corrections_.number(6)), gramsOrNothing(mg),
                                  gramsOrNothing(corrections_.numberOrNull(8)), by, reason, second});
  }

  FeedingWords words_;
  FedFoods foods_;
  PreparedStatement bowls_, lines_, corrections_;
};

/// All groups of a section, or of all.
SheetReader::Groups groupsOf(Collection::Inner& inner, const std::optional<std::string>& section) {
  PreparedStatement read(inner.connection, section ? "SELECT id, code FROM animal_group WHERE section = ?"
                                                   : "SELECT id, code FROM animal_group");
  if (section) read.bind(1, *section);
  SheetReader::Groups groups;
  while (read.step()) groups.emplace(read.number(0), read.text(1));
  return groups;
}

}  // namespace

std::vector<Bowl> bowlsOfDay(const Collection& collection, Date day,
                             const std::optional<std::string>& section) {
  return guarded(collection.file(), [&] {
    SheetReader reader(collection.inner(), section ? kOfSection : kOfAll);
    if (section)
      reader.bind(intake::dayNumber(day), *section);
    else
      reader.bind(intake::dayNumber(day));
    const AskedTogether together(collection.inner().connection);
    std::vector<Bowl> bowls = reader.read(groupsOf(collection.inner(), section));
    together.end();
    std::ranges::stable_sort(bowls, {}, [](const Bowl& bowl) { return std::string_view(bowl.key.group); });
    return bowls;
  });
}

std::vector<Bowl> bowlsOfGroup(const Collection& collection, const std::string& group, Date from, Date to) {
  return guarded(collection.file(), [&] {
    const auto number = groupNumber(collection.inner(), group);
    if (!number) return std::vector<Bowl>{};
    SheetReader reader(collection.inner(), kOfGroup);
    reader.bind(*number, intake::dayNumber(from), intake::dayNumber(to));
    const AskedTogether together(collection.inner().connection);
    std::vector<Bowl> bowls = reader.read({{*number, group}});
    together.end();
    return bowls;
  });
}

std::vector<BowlGiven> bowlsGiven(const Collection& collection, const std::string& group, Date from,
                                  Date to) {
  return guarded(collection.file(), [&] {
    Collection::Inner& inner = collection.inner();
    const AskedTogether together(inner.connection);
    FeedingWords words(inner);
    words.ask();
    RowQuery rows(inner.connection,
                  "SELECT day, meal, COALESCE((SELECT diet FROM diet_version WHERE id = version_id), ''), "
                  "COALESCE((SELECT number FROM diet_version WHERE id = version_id), 0) FROM feeding_bowl "
                  "WHERE group_id = (SELECT id FROM animal_group WHERE code = :group) AND day BETWEEN :first "
                  "AND :last ORDER BY day, bowl",
                  group, intake::dayNumber(from), intake::dayNumber(to));
    std::vector<BowlGiven> bowls;
    int day = 0;
    int meal = 0;
    for (BowlGiven bowl; rows.next(day, meal, bowl.diet, bowl.version); bowls.push_back(bowl)) {
      bowl.day = intake::dayOfNumber(day);
      bowl.meal = words.wordOf(meal);
    }
    together.end();
    return bowls;
  });
}

std::optional<Bowl> findBowl(const Collection& collection, const BowlKey& key) {
  for (Bowl& bowl : bowlsOfGroup(collection, key.group, key.day, key.day))
    if (bowl.key == key) return std::move(bowl);
  return std::nullopt;
}

std::optional<FedSpan> fedSpan(const Collection& collection, const std::string& group, Date from, Date to) {
  return guarded(collection.file(), [&]() -> std::optional<FedSpan> {
    const auto find = [&](const char* which) {
      PreparedStatement read(
          collection.inner().connection,
          std::string("SELECT ") + which +
              "(day) FROM feeding_bowl WHERE group_id = (SELECT id FROM animal_group WHERE "
              "code = ?) AND day BETWEEN ? AND ?");
      read.bind(1, group);
      read.bind(2, intake::dayNumber(from));
      read.bind(3, intake::dayNumber(to));
      std::optional<long long> day;
      if (read.step()) day = read.numberOrNull(0);
      read.reset();
      return day;
    };
    const AskedTogether together(collection.inner().connection);
    const auto first = find("MIN");
    const auto last = find("MAX");
    together.end();
    if (!first || !last) return std::nullopt;
    return FedSpan{intake::dayOfNumber(static_cast<int>(*first)),
                   intake::dayOfNumber(static_cast<int>(*last))};
  });
}

intake::ToleranceRule toleranceRule(const Collection& collection) {
  return guarded(collection.file(), [&] {
    constexpr long long kOnly = 1;
    const auto row = loadById<intake::ToleranceRule>(collection.inner(), kOnly);
    return row ? row->record : intake::ToleranceRule{};
  });
}

}  // namespace tarebowl::store
