// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_reading.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_lines.h"
#include "core/store/feeding_tables.h"

#include <algorithm>

namespace tarebowl::store {

using intake::Bowl;
using intake::BowlItem;
using intake::BowlKey;
using intake::LeftoverKind;
using quantity::Date;

namespace {

constexpr const char* kBowls =
    "SELECT day, bowl, meal, label, COALESCE(diet_version.diet, ''), COALESCE(diet_version.number, 0), "
    "animals, rest_mg, rest_by, rest_at FROM feeding_bowl LEFT JOIN diet_version ON diet_version.id = "
    "version_id WHERE group_id = ? AND day BETWEEN ? AND ? ORDER BY day, bowl";
constexpr const char* kLines =
    "SELECT feeding_line.day, feeding_line.bowl, feeding_line.item, feeding_line.food, planned_mg, "
    "preparation, swap, weighed_mg, weighed_by, weighed_at, left_kind, left_mg, lost_mg, left_by, left_at, "
    "CASE WHEN swap_made.item = feeding_line.item THEN 1 ELSE 0 END FROM feeding_line LEFT JOIN swap_made ON "
    "swap_made.id = swap WHERE group_id = ? AND feeding_line.day BETWEEN ? AND ? "
    "ORDER BY feeding_line.day, feeding_line.bowl, feeding_line.item";
constexpr const char* kCorrections =
    "SELECT day, bowl, item, kind, second, left_kind, mg, lost_mg, by_word, at, reason FROM "
    "feeding_correction WHERE group_id = ? AND day BETWEEN ? AND ? ORDER BY day, bowl, item, kind, place";

std::optional<quantity::Grams> gramsOrNothing(std::optional<long long> mg) {
  return mg ? std::optional(gramsOf(*mg)) : std::nullopt;
}

/// Reads sheets of group after group with statements that are compiled once.
class SheetReader {
 public:
  explicit SheetReader(Collection::Inner& inner)
      : words_(inner),
        foods_(inner),
        bowls_(inner.connection, kBowls),
        lines_(inner.connection, kLines),
        corrections_(inner.connection, kCorrections) {
    if (!inner.connection.gathers()) return;
    const AskedTogether together(inner.connection);  // the words, before it is known which of them are wanted
    (void)words_.wordOf(0);
    (void)foods_.codeOf(0);
  }

  void read(long long group, const std::string& code, int from, int to, std::vector<Bowl>& bowls) {
    const std::size_t first = bowls.size();
    for (PreparedStatement* statement : {&bowls_, &lines_, &corrections_}) {
      statement->bind(1, group);
      statement->bind(2, from);
      statement->bind(3, to);
    }
    while (bowls_.step()) bowls.push_back(bowl(code));
    std::size_t at = first;
    while (lines_.step()) {
      find(bowls, at, lines_.number(0), lines_.number(1));
      bowls.at(at).items.push_back(item(bowls[at].key.day));
    }
    at = first;
    while (corrections_.step()) {
      find(bowls, at, corrections_.number(0), corrections_.number(1));
      correct(bowls.at(at));
    }
  }

 private:
  [[nodiscard]] static bool isAt(const Bowl& bowl, long long day, long long number) {
    return intake::dayNumber(bowl.key.day) == day && bowl.key.bowl == number;
  }
  /// Bowls, lines and corrections come in one order.
  static void find(const std::vector<Bowl>& bowls, std::size_t& at, long long day, long long number) {
    while (at < bowls.size() && !isAt(bowls[at], day, number)) ++at;
  }

  intake::Signed signedBy(const Date& day, long long who, long long at) {
    return {words_.wordOf(who), intake::timeFrom(day, at)};
  }

  Bowl bowl(const std::string& code) {
    const Date day = intake::dayOfNumber(static_cast<int>(bowls_.number(0)));
    Bowl made{.key = {code, day, static_cast<int>(bowls_.number(1))},
              .meal = words_.wordOf(bowls_.number(2)),
              .label = words_.wordOf(bowls_.number(3)),
              .diet = bowls_.text(4),
              .version = static_cast<int>(bowls_.number(5)),
              .animals = static_cast<int>(bowls_.number(6))};
    if (const auto rest = bowls_.numberOrNull(7))
      made.remainders.push_back(
          {.left = gramsOf(*rest), .by = signedBy(day, bowls_.number(8), bowls_.number(9))});
    return made;
  }

  BowlItem item(const Date& day) {
    BowlItem made{.item = static_cast<int>(lines_.number(2)),
                  .food = foods_.codeOf(lines_.number(3)),
                  .planned = gramsOf(lines_.number(4)),
                  .swappedOut = lines_.number(15) == 1};
    if (const auto preparation = lines_.numberOrNull(5)) made.preparation = words_.wordOf(*preparation);
    if (const auto swap = lines_.numberOrNull(6)) made.swap = *swap;
    if (const auto weighed = lines_.numberOrNull(7))
      made.weighings.push_back(
          {.actual = gramsOf(*weighed), .by = signedBy(day, lines_.number(8), lines_.number(9))});
    if (const auto kind = lines_.numberOrNull(10))
      made.leftovers.push_back({.kind = static_cast<LeftoverKind>(*kind),
                                .left = gramsOrNothing(lines_.numberOrNull(11)),
                                .lost = gramsOrNothing(lines_.numberOrNull(12)),
                                .by = signedBy(day, lines_.number(13), lines_.number(14))});
    return made;
  }

  void correct(Bowl& bowl) {
    const auto by = signedBy(bowl.key.day, corrections_.number(8), corrections_.number(9));
    const bool second = corrections_.number(4) == 1;
    const std::string reason = corrections_.text(10);
    const auto mg = corrections_.numberOrNull(6);
    const auto kind = static_cast<EntryKind>(corrections_.number(3));
    if (kind == EntryKind::Remainder) {
      bowl.remainders.push_back({gramsOf(mg.value_or(0)), by, reason, second});
      return;
    }
    const auto found =
        std::ranges::find(bowl.items, static_cast<int>(corrections_.number(2)), &BowlItem::item);
    if (found == bowl.items.end()) return;
    if (kind == EntryKind::Weight)
      found->weighings.push_back({gramsOf(mg.value_or(0)), by, reason, second});
    else
      found->leftovers.push_back({static_cast<LeftoverKind>(corrections_.number(5)), gramsOrNothing(mg),
                                  gramsOrNothing(corrections_.numberOrNull(7)), by, reason, second});
  }

  FeedingWords words_;
  FedFoods foods_;
  PreparedStatement bowls_, lines_, corrections_;
};

struct NumberedGroup {
  long long number = 0;
  std::string code{};
};

std::vector<NumberedGroup> groupsOf(Collection::Inner& inner, const std::optional<std::string>& section) {
  PreparedStatement read(inner.connection, section ? "SELECT id, code FROM animal_group WHERE section = ? "
                                                     "ORDER BY code"
                                                   : "SELECT id, code FROM animal_group ORDER BY code");
  if (section) read.bind(1, *section);
  std::vector<NumberedGroup> groups;
  while (read.step()) groups.push_back({read.number(0), read.text(1)});
  return groups;
}

}  // namespace

std::vector<Bowl> bowlsOfDay(const Collection& collection, Date day,
                             const std::optional<std::string>& section) {
  return guarded(collection.file(), [&] {
    std::vector<Bowl> bowls;
    SheetReader reader(collection.inner());
    const auto groups = groupsOf(collection.inner(), section);
    const int number = intake::dayNumber(day);
    const AskedTogether together(collection.inner().connection);
    for (const NumberedGroup& group : groups) reader.read(group.number, group.code, number, number, bowls);
    together.end();
    return bowls;
  });
}

std::vector<Bowl> bowlsOfGroup(const Collection& collection, const std::string& group, Date from, Date to) {
  return guarded(collection.file(), [&] {
    std::vector<Bowl> bowls;
    if (const auto number = groupNumber(collection.inner(), group)) {
      SheetReader reader(collection.inner());
      const AskedTogether together(collection.inner().connection);
      reader.read(*number, group, intake::dayNumber(from), intake::dayNumber(to), bowls);
      together.end();
    }
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
