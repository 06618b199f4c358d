// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_lines.h"
#include "core/store/feeding_reading.h"
#include "core/store/sqlite_statement.h"

#include <map>
#include <tuple>

namespace tarebowl::store {

using intake::LeftoverKind;

namespace {

constexpr const char* kLines =
    "SELECT day, bowl, item, food, planned_mg, swap, weighed_mg, left_kind, left_mg, lost_mg FROM "
    "feeding_line WHERE group_id = ? AND day BETWEEN ? AND ? ORDER BY day, bowl, item";
constexpr const char* kCorrections =
    "SELECT day, bowl, item, kind, left_kind, mg, lost_mg FROM feeding_correction WHERE group_id = ? AND day "
    "BETWEEN ? AND ? AND second = 0 AND kind < 2 ORDER BY day, bowl, item, kind, place";

using Place = std::tuple<long long, long long, long long, long long>;  // day, bowl, item, kind

std::optional<quantity::Grams> grams(std::optional<long long> mg) {
  return mg ? std::optional(gramsOf(*mg)) : std::nullopt;
}

/// Lines of group after group.
class LineReader {
 public:
  explicit LineReader(Collection::Inner& inner)
      : bowls_(inner.connection,
               "SELECT day, bowl, animals FROM feeding_bowl WHERE group_id = ? AND day BETWEEN ? AND ? ORDER "
               "BY day, bowl"),
        lines_(inner.connection, kLines),
        corrections_(inner.connection, kCorrections),
        swapped_(inner.connection, "SELECT item FROM swap_made WHERE id = ?") {}

  void read(long long group, int from, int to, const std::function<void(const FedLine&)>& take) {
    for (PreparedStatement* statement : {&bowls_, &lines_, &corrections_}) {
      statement->bind(1, group);
      statement->bind(2, from);
      statement->bind(3, to);
    }
    readCorrections();
    FedLine line{.group = group};
    bool more = bowls_.step();
    int lastDay = -1;
    while (lines_.step()) {
      const auto day = static_cast<int>(lines_.number(0));
      line.bowl = static_cast<int>(lines_.number(1));
      while (more && (bowls_.number(0) < day || (bowls_.number(0) == day && bowls_.number(1) < line.bowl)))
        more = bowls_.step();
      if (more) line.animals = static_cast<int>(bowls_.number(2));
      if (day != lastDay) line.day = intake::dayOfNumber(day);
      lastDay = day;
      line.item = static_cast<int>(lines_.number(2));
      if (!isSwappedOut(line.item)) take(filled(line));
    }
    if (more) bowls_.reset();
  }

 private:
  void readCorrections() {
    corrected_.clear();
    while (corrections_.step())
      corrected_[{corrections_.number(0), corrections_.number(1), corrections_.number(2),
                  corrections_.number(3)}] = {static_cast<int>(corrections_.number(4)),
                                              corrections_.numberOrNull(5), corrections_.numberOrNull(6)};
  }

  [[nodiscard]] bool isSwappedOut(int item) {
    const auto swap = lines_.numberOrNull(5);
    if (!swap) return false;
    swapped_.bind(1, *swap);
    return swapped_.runForNumber() == item;
  }

  [[nodiscard]] const EntryValue* correction(EntryKind kind) const {
    if (corrected_.empty()) return nullptr;
    const auto found =
        corrected_.find({lines_.number(0), lines_.number(1), lines_.number(2), static_cast<long long>(kind)});
    return found == corrected_.end() ? nullptr : &found->second;
  }

  FedLine& filled(FedLine& line) const {
    line.food = lines_.number(3);
    line.planned = gramsOf(lines_.number(4));
    line.offered = grams(lines_.numberOrNull(6));
    if (const EntryValue* weight = correction(EntryKind::Weight)) line.offered = grams(weight->mg);
    const auto kind = lines_.numberOrNull(7);
    line.leftover = kind ? std::optional(static_cast<LeftoverKind>(*kind)) : std::nullopt;
    line.left = grams(lines_.numberOrNull(8));
    line.lost = grams(lines_.numberOrNull(9));
    if (const EntryValue* leftover = correction(EntryKind::Leftover)) {
      line.leftover = static_cast<LeftoverKind>(leftover->leftKind.value_or(0));
      line.left = grams(leftover->mg);
      line.lost = grams(leftover->lost);
    }
    return line;
  }

  PreparedStatement bowls_, lines_, corrections_, swapped_;
  std::map<Place, EntryValue> corrected_;
};

}  // namespace

void readFedLines(const Collection& collection, const std::optional<std::string>& group, quantity::Date from,
                  quantity::Date to, const std::function<void(const FedLine&)>& take) {
  guarded(collection.file(), [&] {
    Collection::Inner& inner = collection.inner();
    LineReader reader(inner);
    PreparedStatement groups(inner.connection, group ? "SELECT id FROM animal_group WHERE code = ?"
                                                     : "SELECT id FROM animal_group ORDER BY id");
    if (group) groups.bind(1, *group);
    while (groups.step()) reader.read(groups.number(0), intake::dayNumber(from), intake::dayNumber(to), take);
  });
}

std::vector<FedFood> fedFoods(const Collection& collection) {
  return guarded(collection.file(), [&] {
    PreparedStatement read(collection.inner().connection,
                           "SELECT fed_food.id, COALESCE(food.code, fed_food.code) FROM fed_food LEFT JOIN "
                           "food ON food.id = fed_food.food_id ORDER BY fed_food.id");
    std::vector<FedFood> foods;
    while (read.step()) foods.push_back({read.number(0), read.text(1)});
    return foods;
  });
}

}  // namespace tarebowl::store
