// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_lines.h"

#include "core/intake/time_of_sheet.h"
#include "core/store/write.h"

#include <fmt/format.h>

namespace tarebowl::store {

using intake::BowlKey;
using intake::ItemKey;

namespace {

constexpr const char* kAddBowl =
    "INSERT INTO feeding_bowl (group_id, day, bowl, meal, label, version_id, animals) "
    "VALUES (?, ?, ?, ?, ?, ?, ?)";
constexpr const char* kAddLine =
    "INSERT INTO feeding_line (group_id, day, bowl, item, food, planned_mg, preparation, swap) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?)";
constexpr const char* kWeight =
    "UPDATE feeding_line SET weighed_mg = ?, weighed_by = ?, weighed_at = ? "
    "WHERE group_id = ? AND day = ? AND bowl = ? AND item = ? AND weighed_mg IS NULL";
constexpr const char* kLeftover =
    "UPDATE feeding_line SET left_kind = ?, left_mg = ?, lost_mg = ?, left_by = ?, left_at = ? "
    "WHERE group_id = ? AND day = ? AND bowl = ? AND item = ? AND left_kind IS NULL";
constexpr const char* kRest =
    "UPDATE feeding_bowl SET rest_mg = ?, rest_by = ?, rest_at = ? "
    "WHERE group_id = ? AND day = ? AND bowl = ? AND rest_mg IS NULL";
constexpr const char* kLater =
    "INSERT INTO feeding_correction (group_id, day, bowl, item, kind, place, second, left_kind, mg, lost_mg, "
    "by_word, at, reason) SELECT ?1, ?2, ?3, ?4, ?5, COALESCE(MAX(place), 0) + 1, ?6, ?7, ?8, ?9, ?10, ?11, "
    "?12 FROM feeding_correction WHERE group_id = ?1 AND day = ?2 AND bowl = ?3 AND item = ?4 AND kind = ?5";
constexpr const char* kFindLine =
    "SELECT CASE WHEN swap_made.item = feeding_line.item THEN 1 ELSE 0 END FROM feeding_line "
    "LEFT JOIN swap_made ON swap_made.id = feeding_line.swap "
    "WHERE group_id = ? AND feeding_line.day = ? AND feeding_line.bowl = ? AND feeding_line.item = ?";

/// Binds from a place on; the next free place.
int bindPlace(PreparedStatement& statement, int from, const LinePlace& place, bool withItem) {
  statement.bind(from, place.group);
  statement.bind(from + 1, place.day);
  statement.bind(from + 2, place.bowl);
  if (withItem) statement.bind(from + 3, place.item);
  return from + (withItem ? 4 : 3);
}

}  // namespace

std::string nameOf(const BowlKey& key) {
  return fmt::format("bowl {} of {} on {}", key.bowl, key.group, quantity::isoDate(key.day));
}

FeedingLines::FeedingLines(Collection::Inner& inner, const Author& author)
    : inner_(inner),
      author_(author),
      words_(inner),
      foods_(inner),
      bowl_(inner.connection, kAddBowl),
      line_(inner.connection, kAddLine),
      weight_(inner.connection, kWeight),
      leftover_(inner.connection, kLeftover),
      rest_(inner.connection, kRest),
      later_(inner.connection, kLater),
      findBowl_(inner.connection, "SELECT 1 FROM feeding_bowl WHERE group_id = ? AND day = ? AND bowl = ?"),
      findLine_(inner.connection, kFindLine) {}

long long FeedingLines::secondsOf(int day) const {
  const auto seconds = intake::secondsFrom(intake::dayOfNumber(day), author_.at);
  if (!seconds) refuse(inner_, fmt::format("\"{}\" is no time to the second in UTC", author_.at));
  return *seconds;
}

LinePlace FeedingLines::placeOf(const BowlKey& key) {
  const auto [known, isNew] = groups_.try_emplace(key.group, 0);
  if (isNew) {
    const auto group = groupNumber(inner_, key.group);
    if (!group) refuse(inner_, "there is no group " + key.group);
    known->second = *group;
  }
  const LinePlace place{known->second, intake::dayNumber(key.day), key.bowl, 0};
  bindPlace(findBowl_, 1, place, false);
  if (!findBowl_.runForNumber()) refuse(inner_, "there is no " + nameOf(key));
  return place;
}

LinePlace FeedingLines::placeOf(const ItemKey& key) {
  LinePlace place = placeOf(key.bowl);
  place.item = key.item;
  bindPlace(findLine_, 1, place, true);
  const auto swappedOut = findLine_.runForNumber();
  if (!swappedOut) refuse(inner_, fmt::format("there is no food {} in {}", key.item, nameOf(key.bowl)));
  if (*swappedOut == 1)
    refuse(inner_, fmt::format("food {} in {} was swapped for another", key.item, nameOf(key.bowl)));
  return place;
}

void FeedingLines::addBowl(long long group, const intake::Bowl& bowl, std::optional<long long> version) {
  const LinePlace place{group, intake::dayNumber(bowl.key.day), bowl.key.bowl, 0};
  bindPlace(bowl_, 1, place, false);
  bowl_.bind(4, words_.numberOf(bowl.meal));
  bowl_.bind(5, words_.numberOf(bowl.label));
  bowl_.bind(6, version);
  bowl_.bind(7, bowl.animals);
  bowl_.run();
  for (const intake::BowlItem& item : bowl.items)
    addLine({place.group, place.day, place.bowl, item.item}, item);
}

void FeedingLines::addLine(const LinePlace& place, const intake::BowlItem& item) {
  bindPlace(line_, 1, place, true);
  line_.bind(5, foods_.numberOf(item.food));
  line_.bind(6, milligrams(item.planned));
  if (item.preparation.empty())
    line_.bindNull(7);
  else
    line_.bind(7, words_.numberOf(item.preparation));
  line_.bind(8, item.swap ? std::optional<long long>(*item.swap) : std::nullopt);
  line_.run();
}

bool FeedingLines::writeFirst(EntryKind kind, const LinePlace& place, const EntryValue& value) {
  PreparedStatement& first = kind == EntryKind::Weight     ? weight_
                             : kind == EntryKind::Leftover ? leftover_
                                                           : rest_;
  int next = 1;
  if (kind == EntryKind::Leftover) first.bind(next++, value.leftKind);
  first.bind(next++, value.mg);
  if (kind == EntryKind::Leftover) first.bind(next++, value.lost);
  first.bind(next++, words_.numberOf(author_.who));
  first.bind(next++, secondsOf(place.day));
  bindPlace(first, next, place, kind != EntryKind::Remainder);
  return first.run() > 0;
}

void FeedingLines::writeLater(EntryKind kind, const LinePlace& place, const EntryValue& value,
                              const std::string& reason) {
  bindPlace(later_, 1, place, true);
  later_.bind(5, static_cast<int>(kind));
  later_.bind(6, reason.empty() ? 1 : 0);
  later_.bind(7, value.leftKind);
  later_.bind(8, value.mg);
  later_.bind(9, value.lost);
  later_.bind(10, words_.numberOf(author_.who));
  later_.bind(11, secondsOf(place.day));
  later_.bind(12, reason);
  later_.run();
}

}  // namespace tarebowl::store
