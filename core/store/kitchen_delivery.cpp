// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/kitchen_delivery.h"

#include "core/intake/prep_sheet.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_words.h"
#include "core/store/prepared_statement.h"
#include "core/store/write.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

namespace tarebowl::store {

using intake::Bowl;
using intake::BowlItem;
using quantity::Grams;
using Outcome = Delivered::Outcome;

namespace {

/// Leaves the transaction: what was written in it is not kept.
struct Clash {
  std::string why{};
  std::optional<SignedValue> theirs{};
};

/// Where an entry belongs in a collection.
struct Place {
  Bowl bowl{};  ///< as it is there
  int item = 0;
  bool wasThere = false;  ///< before the entry came
};

bool isSameBowl(const Bowl& a, const Bowl& b) {
  return a.key.bowl == b.key.bowl && a.meal == b.meal && a.label == b.label && a.diet == b.diet;
}

std::optional<Bowl> bowlThere(const Collection& collection, const Bowl& wanted) {
  const auto there = bowlsOfGroup(collection, wanted.key.group, wanted.key.day, wanted.key.day);
  for (const Bowl& bowl : there)
    if (isSameBowl(bowl, wanted)) return bowl;
  const auto place = intake::sameBowls(std::vector<Bowl>{wanted}, there).at(0);
  return place ? std::optional(there[*place]) : std::nullopt;
}

/// The line itself, or the one on which its food stands by now.
int itemThere(const Bowl& there, const KitchenEntry& entry) {
  if (entry.noted == Noted::Remainder) return 0;
  const std::string& food = entry.food();
  const auto is = [&](const BowlItem& item) { return item.food == food && !item.swappedOut; };
  for (const BowlItem& item : there.items)
    if (item.item == entry.item && is(item)) return item.item;
  if (std::ranges::count_if(there.items, is) == 1) return std::ranges::find_if(there.items, is)->item;
  const bool wasSwapped = std::ranges::any_of(
      there.items, [&](const BowlItem& item) { return item.food == food && item.swappedOut; });
  const std::string name = food.empty() ? "such food" : food;
  throw Clash{.why = wasSwapped ? name + " was swapped for another food" : "the bowl has no " + name};
}

Place placeFor(Collection& collection, const KitchenEntry& entry) {
  Place place;
  const auto before = bowlThere(collection, entry.bowl);
  place.wasThere = before.has_value();
  std::vector<Bowl> bowls = entry.beside;
  if (!before) bowls.push_back(entry.bowl);
  // In the order of the sheet: by that its bowls are numbered.
  std::ranges::stable_sort(bowls, {}, [](const Bowl& bowl) { return bowl.key; });
  if (!bowls.empty()) (void)openSheet(collection, entry.section, entry.bowl.key.day, bowls, entry.author);
  const auto now = before ? before : bowlThere(collection, entry.bowl);
  if (!now) throw Clash{.why = "the sheet has no such bowl"};
  place.bowl = *now;
  place.item = itemThere(place.bowl, entry);
  return place;
}

Kept writeFirst(Collection& collection, const Place& place, const KitchenEntry& entry) {
  const intake::ItemKey key{place.bowl.key, place.item};
  const NotedValue& value = entry.value;
  if (entry.noted == Noted::Weight) {
    const WeightRead weight{key, value.grams.value_or(Grams(0))};
    return weighIn(collection, {&weight, 1}, entry.author).at(0);
  }
  if (entry.noted == Noted::Leftover) {
    const LeftoverFound found{key, value.kind.value_or(intake::LeftoverKind::NotWeighed), value.grams,
                              value.lost};
    return noteLeftovers(collection, {&found, 1}, entry.author).at(0);
  }
  return noteRemainder(collection, place.bowl.key, value.grams.value_or(Grams(0)), entry.author);
}

void writeCorrection(Collection& collection, const Place& place, const KitchenEntry& entry,
                     const std::string& reason) {
  const intake::ItemKey key{place.bowl.key, place.item};
  const NotedValue& value = entry.value;
  if (entry.noted == Noted::Weight)
    (void)correctWeight(collection, {key, value.grams.value_or(Grams(0))}, reason, entry.author);
  else if (entry.noted == Noted::Leftover)
    (void)correctLeftover(
        collection, {key, value.kind.value_or(intake::LeftoverKind::NotWeighed), value.grams, value.lost},
        reason, entry.author);
  else
    (void)correctRemainder(collection, place.bowl.key, value.grams.value_or(Grams(0)), reason, entry.author);
}

Kept writeAt(Collection& collection, const Place& place, const KitchenEntry& entry) {
  if (entry.reason.empty()) return writeFirst(collection, place, entry);
  writeCorrection(collection, place, entry, entry.reason);
  return Kept::First;
}

bool wasSent(Collection::Inner& inner, const KitchenEntry& entry) {
  PreparedStatement find(inner.connection, "SELECT 1 FROM station_sent WHERE id = ?");
  find.bind(1, static_cast<long long>(entry.id));
  return find.runForNumber().has_value();
}

void noteSent(Collection::Inner& inner, const KitchenEntry& entry, const std::string& station) {
  PreparedStatement add(inner.connection,
                        "INSERT INTO station_sent (id, station, who, at) VALUES (?, ?, ?, ?)");
  add.bind(1, static_cast<long long>(entry.id));
  add.bind(2, station);
  add.bind(3, entry.author.who);
  add.bind(4, entry.author.at);
  add.run();
}

/// Masses are kept in whole milligrams: what was read as 12.3456 g stands there as 12.346 g.
std::optional<Grams> asKept(const std::optional<Grams>& mass) {
  return mass ? std::optional(gramsOf(milligrams(*mass))) : std::nullopt;
}

NotedValue asKept(const NotedValue& value) {
  return {value.kind, asKept(value.grams), asKept(value.lost)};
}

bool isSame(const std::optional<NotedValue>& a, const std::optional<SignedValue>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  return asKept(*a) == b->value;
}

Outcome writeUnlessChanged(Collection& collection, const Place& place, const KitchenEntry& entry) {
  const auto now = valueThatCounts(place.bowl, place.item, entry.noted);
  const SignedValue mine{asKept(entry.value), {entry.author.who, entry.author.at}};
  // It was written just before the connection was lost, by the desk that did not hear of it any more.
  if (isWritten(place.bowl, place.item, entry.noted, mine)) return Outcome::ThereBefore;
  if (place.wasThere && place.bowl.version != entry.bowl.version)
    throw Clash{.why = fmt::format("the bowl was opened by version {} of its diet, and this is of version {}",
                                   place.bowl.version, entry.bowl.version),
                .theirs = now};
  if (isSame(entry.seen, now)) {
    (void)writeAt(collection, place, entry);
  } else if (now && now->value == mine.value) {
    (void)writeFirst(collection, place, entry);  // both found the same: it is kept beside the other
  } else {
    throw Clash{
        .why = now ? "something else was written there meanwhile" : "what was to be corrected is not there",
        .theirs = now};
  }
  return Outcome::Written;
}

Outcome writeByChoice(Collection& collection, const Place& place, const KitchenEntry& entry, Choice choice,
                      const std::string& why) {
  const auto now = valueThatCounts(place.bowl, place.item, entry.noted);
  if (choice == Choice::Theirs) {
    if (!now) throw Clash{};
    (void)writeFirst(collection, place, entry);
  } else if (now) {
    writeCorrection(collection, place, entry, entry.reason.empty() ? why : entry.reason);
  } else {
    (void)writeFirst(collection, place, entry);
  }
  return Outcome::Written;
}

/// The collection itself does not take it: another try would end the same way.
bool isForGood(const StoreError& error) {
  return error.code() == StoreErrorCode::Refused || error.code() == StoreErrorCode::NoPermission ||
         error.code() == StoreErrorCode::Conflict || error.code() == StoreErrorCode::Failed;
}

Delivered afterClash(const Collection& server, const Clash& clash, std::optional<Choice> choice) {
  if (!choice) return {.outcome = Outcome::Conflict, .why = clash.why, .theirs = clash.theirs};
  if (choice == Choice::Theirs) return {.outcome = Outcome::SetAside};
  throw StoreError(StoreErrorCode::Refused, server.file(), clash.why);
}

}  // namespace

Kept writeDown(Collection& collection, const KitchenEntry& entry) {
  try {
    return write(collection, [&](Collection::Inner& /*inner*/) {
      return writeAt(collection, placeFor(collection, entry), entry);
    });
  } catch (const Clash& clash) {
    throw StoreError(StoreErrorCode::Refused, collection.file(), clash.why);
  }
}

Delivered deliver(Collection& server, const KitchenEntry& entry, const std::string& station,
                  std::optional<Choice> choice, const std::string& why) {
  try {
    return write(server, [&](Collection::Inner& inner) -> Delivered {
      if (wasSent(inner, entry)) return {.outcome = Outcome::ThereBefore};
      const Place place = placeFor(server, entry);
      const Outcome outcome = choice ? writeByChoice(server, place, entry, *choice, why)
                                     : writeUnlessChanged(server, place, entry);
      noteSent(inner, entry, station);
      return {.outcome = outcome};
    });
  } catch (const Clash& clash) {
    return afterClash(server, clash, choice);
  } catch (const StoreError& error) {
    const bool isRefused =
        error.code() == StoreErrorCode::Refused || error.code() == StoreErrorCode::NoPermission;
    if (choice == Choice::Mine || !(choice ? isRefused : isForGood(error))) throw;
    return afterClash(server, {.why = error.detail()}, choice);
  }
}

}  // namespace tarebowl::store
