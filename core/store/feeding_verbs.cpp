// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/feeding_verbs.h"

#include "core/intake/prep_sheet.h"
#include "core/intake/time_of_sheet.h"
#include "core/store/feeding_lines.h"
#include "core/store/feeding_tables.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <functional>
#include <type_traits>
#include <utility>

namespace tarebowl::store {

using intake::Bowl;
using intake::BowlKey;
using intake::LeftoverKind;
using quantity::Grams;

namespace {

long long massOf(Collection::Inner& inner, Grams mass) {
  constexpr double kMostGrams = 1e9;
  if (!(mass >= Grams(0)))
    refuse(inner, fmt::format("{} g is below nothing: tare the empty bowl and weigh again", mass.value()));
  if (mass > Grams(kMostGrams)) refuse(inner, fmt::format("{} g is no weight of a bowl", mass.value()));
  return milligrams(mass);
}

EntryValue valueOf(Collection::Inner& inner, const LeftoverFound& found) {
  const bool mustHave = found.kind == LeftoverKind::Weighed || found.kind == LeftoverKind::Estimated;
  const bool mayLose = found.kind == LeftoverKind::Spilled || found.kind == LeftoverKind::Stolen;
  if (mustHave && !found.left) refuse(inner, "it is not said how much was left");
  if (!mustHave && !mayLose && found.left)
    refuse(inner, "what was all eaten or not weighed has no grams left");
  if (!mayLose && found.lost) refuse(inner, "only what was spilled or stolen has grams lost");
  EntryValue value{.leftKind = static_cast<int>(found.kind)};
  if (found.left) value.mg = massOf(inner, *found.left);
  if (found.lost) value.lost = massOf(inner, *found.lost);
  return value;
}

Kept keep(FeedingLines& lines, EntryKind kind, const LinePlace& place, const EntryValue& value) {
  if (lines.writeFirst(kind, place, value)) return Kept::First;
  lines.writeLater(kind, place, value, "");
  return Kept::Second;
}

std::string described(const BowlKey& bowl, int item, const EntryValue& value, const std::string& reason) {
  Json json{{"group", bowl.group}, {"day", quantity::isoDate(bowl.day)}, {"bowl", bowl.bowl}};
  if (item > 0) json["item"] = item;
  if (value.leftKind) json["left_kind"] = *value.leftKind;
  if (value.mg) json["mg"] = *value.mg;
  if (value.lost) json["lost_mg"] = *value.lost;
  json["reason"] = reason;
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// One entry that goes before those there are. key: of a food or a whole bowl.
template <class Key>
Written correct(Collection& collection, EntryKind kind, const Key& key, const std::string& reason,
                const Author& author, const std::function<EntryValue(Collection::Inner&)>& valueFor) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    if (reason.empty()) refuse(inner, "a correction needs a reason");
    FeedingLines lines(inner, author);
    const LinePlace place = lines.placeOf(key);
    const EntryValue value = valueFor(inner);
    lines.writeLater(kind, place, value, reason);
    BowlKey bowl;
    if constexpr (std::is_same_v<Key, BowlKey>)
      bowl = key;
    else
      bowl = key.bowl;
    constexpr std::array<const char*, 3> kVerbs{"correct weight", "correct leftover", "correct remainder"};
    return {0, 0,
            record(inner, {.author = author,
                           .verb = kVerbs.at(static_cast<std::size_t>(kind)),
                           .subject = "feeding",
                           .after = described(bowl, place.item, value, reason)})};
  });
}

/// What is on the group's day already, by what tells bowls apart. In the order of their numbers.
std::vector<Bowl> bowlsThere(Collection::Inner& inner, long long group, const BowlKey& day) {
  PreparedStatement read(inner.connection,
                         "SELECT bowl, meal.word, label.word, COALESCE(diet_version.diet, '') FROM "
                         "feeding_bowl JOIN feeding_word meal ON meal.id = feeding_bowl.meal JOIN "
                         "feeding_word label ON label.id = feeding_bowl.label LEFT JOIN diet_version ON "
                         "diet_version.id = version_id WHERE group_id = ? AND day = ? ORDER BY bowl");
  read.bind(1, group);
  read.bind(2, intake::dayNumber(day.day));
  std::vector<Bowl> there;
  while (read.step())
    there.push_back({.key = {day.group, day.day, static_cast<int>(read.number(0))},
                     .meal = read.text(1),
                     .label = read.text(2),
                     .diet = read.text(3)});
  return there;
}

std::optional<long long> versionOf(Collection::Inner& inner, const Bowl& bowl) {
  if (bowl.diet.empty()) return std::nullopt;
  PreparedStatement find(inner.connection, "SELECT id FROM diet_version WHERE diet = ? AND number = ?");
  find.bind(1, bowl.diet);
  find.bind(2, bowl.version);
  const auto id = find.runForNumber();
  if (!id) refuse(inner, fmt::format("there is no version {} of {}", bowl.version, bowl.diet));
  return id;
}

void refuseUnsoundBowl(Collection::Inner& inner, const Bowl& bowl) {
  if (bowl.animals < 1) refuse(inner, "a bowl of " + bowl.key.group + " is for no animal");
  if (bowl.items.empty()) refuse(inner, "a bowl of " + bowl.key.group + " has no food");
  for (const intake::BowlItem& item : bowl.items) (void)massOf(inner, item.planned);
}

/// Adds the bowls of one group that are not there yet.
void addBowls(Collection::Inner& inner, FeedingLines& lines, const std::string& code, quantity::Date day,
              std::span<const Bowl> bowls, OpenedSheet& opened) {
  const auto group = groupNumber(inner, code);
  if (!group) refuse(inner, "there is no group " + code);
  const std::vector<Bowl> there = bowlsThere(inner, *group, {code, day, 0});
  std::vector<Bowl> own;
  for (const Bowl& bowl : bowls)
    if (bowl.key.group == code) own.push_back(bowl);
  const auto known = intake::sameBowls(own, there);
  int last = there.empty() ? 0 : there.back().key.bowl;
  for (std::size_t i = 0; i < own.size(); ++i) {
    Bowl& bowl = own[i];
    refuseUnsoundBowl(inner, bowl);
    if (known[i]) {
      opened.wereThere.push_back(there[*known[i]].key);
      continue;
    }
    bowl.key = {code, day, ++last};
    int item = 0;
    for (intake::BowlItem& food : bowl.items) food.item = ++item;
    lines.addBowl(*group, bowl, versionOf(inner, bowl));
    ++opened.added;
  }
}

}  // namespace

OpenedSheet openSheet(Collection& collection, const std::string& section, quantity::Date day,
                      std::span<const Bowl> bowls, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    OpenedSheet opened;
    FeedingLines lines(inner, author);
    std::vector<std::string> groups;
    for (const Bowl& bowl : bowls)
      if (std::ranges::find(groups, bowl.key.group) == groups.end()) groups.push_back(bowl.key.group);
    for (const std::string& group : groups) addBowls(inner, lines, group, day, bowls, opened);
    if (opened.added == 0) return opened;
    const Json after{{"section", section}, {"day", quantity::isoDate(day)}, {"bowls", opened.added}};
    record(inner, {.author = author,
                   .verb = "open sheet",
                   .subject = "feeding",
                   .after = after.dump(-1, ' ', false, Json::error_handler_t::replace)});
    return opened;
  });
}

std::vector<Kept> weighIn(Collection& collection, std::span<const WeightRead> weights, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    FeedingLines lines(inner, author);
    std::vector<Kept> kept;
    for (const WeightRead& weight : weights)
      kept.push_back(
          keep(lines, EntryKind::Weight, lines.placeOf(weight.item), {.mg = massOf(inner, weight.actual)}));
    return kept;
  });
}

Written correctWeight(Collection& collection, const WeightRead& weight, const std::string& reason,
                      const Author& author) {
  return correct(collection, EntryKind::Weight, weight.item, reason, author,
                 [&](Collection::Inner& inner) { return EntryValue{.mg = massOf(inner, weight.actual)}; });
}

std::vector<Kept> noteLeftovers(Collection& collection, std::span<const LeftoverFound> leftovers,
                                const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    FeedingLines lines(inner, author);
    std::vector<Kept> kept;
    for (const LeftoverFound& found : leftovers)
      kept.push_back(keep(lines, EntryKind::Leftover, lines.placeOf(found.item), valueOf(inner, found)));
    return kept;
  });
}

Written correctLeftover(Collection& collection, const LeftoverFound& leftover, const std::string& reason,
                        const Author& author) {
  return correct(collection, EntryKind::Leftover, leftover.item, reason, author,
                 [&](Collection::Inner& inner) { return valueOf(inner, leftover); });
}

Kept noteRemainder(Collection& collection, const BowlKey& bowl, Grams left, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    FeedingLines lines(inner, author);
    return keep(lines, EntryKind::Remainder, lines.placeOf(bowl), {.mg = massOf(inner, left)});
  });
}

Written correctRemainder(Collection& collection, const BowlKey& bowl, Grams left, const std::string& reason,
                         const Author& author) {
  return correct(collection, EntryKind::Remainder, bowl, reason, author,
                 [&](Collection::Inner& inner) { return EntryValue{.mg = massOf(inner, left)}; });
}

Written setToleranceRule(Collection& collection, const intake::ToleranceRule& rule, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) -> Written {
    constexpr long long kOnly = 1;
    refuseUnsound(inner, kOnly, rule);
    const auto before = loadById<intake::ToleranceRule>(inner, kOnly);
    const int revision = before ? before->revision + 1 : 1;
    std::optional<std::string> stateBefore;
    if (before) {
      stateBefore = stateOf(before->record);
      updateRow(inner, kOnly, revision, before->record, rule);
    } else {
      insertRow(inner, kOnly, revision, rule);
    }
    return {kOnly, revision,
            record(inner, {0, author, "set tolerance", Table<intake::ToleranceRule>::kSubject, kOnly,
                           stateBefore, stateOf(rule)})};
  });
}

}  // namespace tarebowl::store
