// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_lines.h"
#include "core/store/feeding_reading.h"
#include "core/store/prepared_statement.h"

#include <filesystem>
#include <map>
#include <tuple>
#include <unordered_set>
#include <utility>

namespace tarebowl::store {

using intake::CountedBowl;
using intake::CountedItem;
using intake::LeftoverKind;

namespace {

constexpr const char* kBowls =
    "SELECT day, bowl, animals, label, rest_mg, (SELECT diet FROM diet_version WHERE id = version_id) FROM "
    "feeding_bowl WHERE group_id = (SELECT id FROM animal_group WHERE code = ?) AND day BETWEEN ? AND ? "
    "ORDER BY day, bowl";
constexpr const char* kLines =
    "SELECT day, bowl, item, food, planned_mg, swap, weighed_mg, left_kind, left_mg, lost_mg, CASE WHEN swap "
    "IS NOT NULL THEN (SELECT item FROM swap_made WHERE swap_made.id = feeding_line.swap) END FROM "
    "feeding_line "
    "WHERE group_id = (SELECT id FROM animal_group WHERE code = ?) AND day BETWEEN ? AND ? ORDER BY day, "
    "bowl, item";
constexpr const char* kCorrections =
    "SELECT day, bowl, item, kind, left_kind, mg, lost_mg FROM feeding_correction WHERE group_id = (SELECT "
    "id FROM animal_group WHERE code = ?) AND day "
    "BETWEEN ? AND ? AND second = 0 ORDER BY day, bowl, item, kind, place";

constexpr const char* kAllGroups = "SELECT code FROM animal_group ORDER BY id";

using Place = std::tuple<long long, long long, long long, long long>;  // day, bowl, item, kind

std::optional<quantity::Grams> grams(std::optional<long long> mg) {
  return mg ? std::optional(gramsOf(*mg)) : std::nullopt;
}

}  // namespace

/// Bowls of group after group. One bowl is filled again and again: its texts and items keep their room.
class CountedBowlReader::Inner {
 public:
  explicit Inner(const Collection& collection) : Inner(collection.file(), collection.inner()) {}

  CountedBowlReader::Fed fed(const std::string& group, int from, int to) {
    return guarded(file_, [&] {
      CountedBowlReader::Fed fed;
      ask(group, from, to);
      std::unordered_set<long long> foods;
      for (; hasLine_; hasLine_ = lines_.step()) foods.insert(lines_.number(3));
      for (const long long food : foods) fed.foods.push_back(foods_.codeOf(food));
      for (; hasBowl_; hasBowl_ = bowls_.step()) {
        if (bowls_.isNull(5)) continue;
        fed.diet = bowls_.text(5);
        fed.lastDay = intake::dayOfNumber(static_cast<int>(bowls_.number(0)));
      }
      return fed;
    });
  }

  void read(const std::optional<std::string>& group, int from, int to,
            const std::function<void(const CountedBowl&)>& take) {
    guarded(file_, [&] {
      if (group) return readGroup(*group, from, to, take);
      PreparedStatement groups(inner_.connection, kAllGroups);
      while (groups.step()) readGroup(groups.text(0), from, to, take);
    });
  }

 private:
  Inner(std::filesystem::path file, Collection::Inner& inner)
      : file_(std::move(file)),
        inner_(inner),
        words_(inner),
        foods_(inner),
        bowls_(inner.connection, kBowls),
        lines_(inner.connection, kLines),
        corrections_(inner.connection, kCorrections) {
    if (!inner.connection.gathers()) return;
    const AskedTogether together(inner.connection);  // the words, before it is known which of them are wanted
    words_.ask();
    foods_.ask();
  }

  /// Asks for bowls, lines and corrections together, and goes to the first of each.
  void ask(const std::string& group, int from, int to) {
    for (PreparedStatement* statement : {&bowls_, &lines_, &corrections_}) {
      statement->reset();
      statement->bind(1, group);
      statement->bind(2, from);
      statement->bind(3, to);
    }
    const AskedTogether together(inner_.connection);
    readCorrections();
    hasLine_ = lines_.step();
    hasBowl_ = bowls_.step();
    together.end();
  }

  void readGroup(const std::string& group, int from, int to,
                 const std::function<void(const CountedBowl&)>& take) {
    ask(group, from, to);
    bowl_.group = group;
    for (; hasBowl_; hasBowl_ = bowls_.step()) {
      fillBowl();
      const long long day = bowls_.number(0);
      const long long bowl = bowls_.number(1);
      std::size_t items = 0;
      while (hasLine_ && lines_.number(0) == day && lines_.number(1) == bowl) {
        if (!isSwappedOut()) {
          if (items == bowl_.items.size()) bowl_.items.emplace_back();
          fillItem(bowl_.items[items++]);
        }
        hasLine_ = lines_.step();
      }
      bowl_.items.resize(items);
      take(bowl_);
    }
    if (hasLine_) lines_.reset();
  }

  void readCorrections() {
    corrected_.clear();
    while (corrections_.step())
      corrected_[{corrections_.number(0), corrections_.number(1), corrections_.number(2),
                  corrections_.number(3)}] = {static_cast<int>(corrections_.number(4)),
                                              corrections_.numberOrNull(5), corrections_.numberOrNull(6)};
  }

  [[nodiscard]] const EntryValue* correction(long long day, long long bowl, long long item,
                                             EntryKind kind) const {
    if (corrected_.empty()) return nullptr;
    const auto found = corrected_.find({day, bowl, item, static_cast<long long>(kind)});
    return found == corrected_.end() ? nullptr : &found->second;
  }
  [[nodiscard]] const EntryValue* correction(EntryKind kind) const {
    if (corrected_.empty()) return nullptr;  // before the line is asked again where it stands
    return correction(lines_.number(0), lines_.number(1), lines_.number(2), kind);
  }

  [[nodiscard]] bool isSwappedOut() {
    if (lines_.isNull(5)) return false;  // as most are: asked before it is read
    return lines_.numberOrNull(10) == lines_.number(2);
  }

  void fillBowl() {
    bowl_.day = intake::dayOfNumber(static_cast<int>(bowls_.number(0)));
    bowl_.animals = static_cast<int>(bowls_.number(2));
    bowl_.label = words_.wordOf(bowls_.number(3));
    bowl_.remainder = grams(bowls_.numberOrNull(4));
    bowl_.diet = bowls_.text(5);
    if (const EntryValue* rest = correction(bowls_.number(0), bowls_.number(1), 0, EntryKind::Remainder))
      bowl_.remainder = grams(rest->mg);
  }

  void fillItem(CountedItem& item) {
    item.food = foods_.codeOf(lines_.number(3));
    item.planned = gramsOf(lines_.number(4));
    item.weighed = grams(lines_.numberOrNull(6));
    if (const EntryValue* weight = correction(EntryKind::Weight)) item.weighed = grams(weight->mg);
    item.swappedIn = !lines_.isNull(5);
    item.leftover.reset();
    if (const auto kind = lines_.numberOrNull(7))
      item.leftover = {static_cast<LeftoverKind>(*kind), grams(lines_.numberOrNull(8)),
                       lines_.isNull(9) ? std::nullopt : grams(lines_.number(9))};
    if (const EntryValue* left = correction(EntryKind::Leftover))
      item.leftover = {static_cast<LeftoverKind>(left->leftKind.value_or(0)), grams(left->mg),
                       grams(left->lost)};
  }

  std::filesystem::path file_;
  Collection::Inner& inner_;
  FeedingWords words_;
  FedFoods foods_;
  PreparedStatement bowls_, lines_, corrections_;
  bool hasBowl_ = false;  ///< the statement stands on one
  bool hasLine_ = false;
  std::map<Place, EntryValue> corrected_;
  CountedBowl bowl_;
};

CountedBowlReader::CountedBowlReader(const Collection& collection)
    : inner_(guarded(collection.file(), [&] { return std::make_unique<Inner>(collection); })) {}
CountedBowlReader::CountedBowlReader(CountedBowlReader&& other) noexcept = default;
CountedBowlReader& CountedBowlReader::operator=(CountedBowlReader&& other) noexcept = default;
CountedBowlReader::~CountedBowlReader() = default;

CountedBowlReader::Fed CountedBowlReader::fed(const std::string& group, quantity::Date from,
                                              quantity::Date to) {
  return inner_->fed(group, intake::dayNumber(from), intake::dayNumber(to));
}

void CountedBowlReader::read(const std::optional<std::string>& group, quantity::Date from, quantity::Date to,
                             const std::function<void(const CountedBowl&)>& take) {
  inner_->read(group, intake::dayNumber(from), intake::dayNumber(to), take);
}

}  // namespace tarebowl::store
