// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/swap_verbs.h"

#include "core/store/feeding_lines.h"
#include "core/store/feeding_tables.h"
#include "core/store/record_reading.h"
#include "core/store/record_verbs.h"

#include <fmt/format.h>

namespace tarebowl::store {

using intake::SwapApproval;
using intake::SwapMade;
using quantity::Grams;

namespace {

bool isInBowl(const SwapMade& swap) {
  return swap.approval == SwapApproval::KeeperDecides || swap.approval == SwapApproval::Approved;
}

/// The line that a swap takes out, as it stands.
struct LineNow {
  LinePlace place{};
  std::string food{};
  bool weighed = false;
  std::optional<long long> swap{};
};

LineNow lineNow(Collection::Inner& inner, const LinePlace& place) {
  PreparedStatement read(inner.connection,
                         "SELECT food, weighed_mg, swap FROM feeding_line WHERE group_id = ? AND day = ? AND "
                         "bowl = ? AND item = ?");
  read.bind(1, place.group);
  read.bind(2, place.day);
  read.bind(3, place.bowl);
  read.bind(4, place.item);
  LineNow now{.place = place};
  if (!read.step()) refuse(inner, "the food is no longer on the sheet");
  FedFoods foods(inner);
  now.food = foods.codeOf(read.number(0));
  now.weighed = read.numberOrNull(1).has_value();
  now.swap = read.numberOrNull(2);
  read.reset();
  return now;
}

void setSwap(Collection::Inner& inner, const LinePlace& place, std::optional<long long> swap) {
  PreparedStatement set(inner.connection,
                        "UPDATE feeding_line SET swap = ? WHERE group_id = ? AND day = ? AND bowl = ? AND "
                        "item = ?");
  set.bind(1, swap);
  set.bind(2, place.group);
  set.bind(3, place.day);
  set.bind(4, place.bowl);
  set.bind(5, place.item);
  set.run();
}

int lastItem(Collection::Inner& inner, const LinePlace& place) {
  PreparedStatement last(inner.connection,
                         "SELECT MAX(item) FROM feeding_line WHERE group_id = ? AND day = ? AND bowl = ?");
  last.bind(1, place.group);
  last.bind(2, place.day);
  last.bind(3, place.bowl);
  return static_cast<int>(last.runForNumber().value_or(0));
}

void refuseTaken(Collection::Inner& inner, const LineNow& line) {
  if (line.weighed) refuse(inner, line.food + " is weighed in already; correct its weight first");
}

void putIn(Collection::Inner& inner, FeedingLines& lines, long long id, const SwapMade& swap) {
  const LineNow line = lineNow(inner, lines.placeOf(swap.instead));
  refuseTaken(inner, line);
  setSwap(inner, line.place, id);
  LinePlace place = line.place;
  place.item = lastItem(inner, place);
  for (const intake::GivenInstead& given : swap.given) {
    ++place.item;
    lines.addLine(place, {.item = place.item, .food = given.food, .planned = given.amount, .swap = id});
  }
}

/// Lines of what was given, but for the food that was taken out itself.
std::string givenLines(const char* further) {
  return std::string("feeding_line WHERE group_id = ? AND day = ? AND bowl = ? AND swap = ? AND item <> ?") +
         further;
}

void bindGiven(PreparedStatement& statement, const LinePlace& place, long long id) {
  statement.bind(1, place.group);
  statement.bind(2, place.day);
  statement.bind(3, place.bowl);
  statement.bind(4, id);
  statement.bind(5, place.item);
}

void takeOut(Collection::Inner& inner, FeedingLines& lines, long long id, const SwapMade& swap) {
  LinePlace place = lines.placeOf(swap.instead.bowl);
  place.item = swap.instead.item;
  PreparedStatement weighed(inner.connection,
                            "SELECT COUNT(*) FROM " + givenLines(" AND weighed_mg IS NOT NULL"));
  bindGiven(weighed, place, id);
  if (weighed.runForNumber().value_or(0) > 0)
    refuse(inner, "what was given instead is weighed in: it is in the bowl and stays on the sheet");
  PreparedStatement remove(inner.connection, "DELETE FROM " + givenLines(""));
  bindGiven(remove, place, id);
  remove.run();
  setSwap(inner, place, std::nullopt);
}

}  // namespace

Written addSwap(Collection& collection, const SwapMade& swap, const Author& author) {
  return write(collection, [&](Collection::Inner& inner) {
    FeedingLines lines(inner, author);
    const LineNow line = lineNow(inner, lines.placeOf(swap.instead));
    refuseTaken(inner, line);
    SwapMade made = swap;
    made.food = line.food;
    made.by = {author.who, author.at};
    const Written written = addWithin(inner, made, "swap food", author);
    if (isInBowl(made)) putIn(inner, lines, written.id, made);
    return written;
  });
}

Written decideSwap(Collection& collection, SwapId swap, int seenRevision, bool approved,
                   const std::string& reason, const Author& author) {
  const auto id = static_cast<long long>(swap);
  return changeThing<SwapMade>(collection, id, seenRevision, approved ? "approve swap" : "refuse swap",
                               author, "", [&](Collection::Inner& inner, SwapMade& made) {
                                 if (!approved && reason.empty()) refuse(inner, "a refusal needs a reason");
                                 const bool wasIn = isInBowl(made);
                                 made.approval = approved ? SwapApproval::Approved : SwapApproval::Refused;
                                 made.decidedBy = {author.who, author.at};
                                 made.decision = reason;
                                 FeedingLines lines(inner, author);
                                 if (wasIn && !approved) takeOut(inner, lines, id, made);
                                 if (!wasIn && approved) putIn(inner, lines, id, made);
                               });
}

Written addControlPan(Collection& collection, const intake::ControlPan& pan, const Author& author) {
  return addThing(collection, pan, author);
}

Written editControlPan(Collection& collection, ControlPanId pan, int seenRevision,
                       const intake::ControlPan& changed, const Author& author) {
  return editThing(collection, static_cast<long long>(pan), seenRevision, changed, author);
}

Written removeControlPan(Collection& collection, ControlPanId pan, int seenRevision, const Author& author) {
  return removeThing<intake::ControlPan>(collection, static_cast<long long>(pan), seenRevision, author);
}

std::vector<StoredSwap> swapsBetween(const Collection& collection, quantity::Date from, quantity::Date to) {
  return readAll<StoredSwap>(collection, "WHERE day BETWEEN :from AND :to ORDER BY day, id", from, to);
}

std::vector<StoredSwap> swapsWaiting(const Collection& collection) {
  return readAll<StoredSwap>(collection, "WHERE approval = :waiting ORDER BY day, id", SwapApproval::Waiting);
}

std::vector<StoredControlPan> controlPansBetween(const Collection& collection, quantity::Date from,
                                                 quantity::Date to) {
  return readAll<StoredControlPan>(collection, "WHERE day BETWEEN :from AND :to ORDER BY day, id", from, to);
}

std::vector<StoredControlPan> controlPansThatStand(const Collection& collection) {
  return readAll<StoredControlPan>(collection, "WHERE end_g IS NULL ORDER BY day, id");
}

}  // namespace tarebowl::store
