// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/station_outbox.h"

#include "core/store/kitchen_entry_json.h"
#include "core/store/prepared_statement.h"
#include "core/store/write.h"

#include <fmt/format.h>

#include <algorithm>

namespace tarebowl::store {

namespace {

/// Enough to look up what became of the last days' entries.
constexpr int kSentKept = 500;

struct NewState {
  EntryState state = EntryState::Sent;
  std::string why{};
  std::string theirs{};
  Author decided{};
};

void setState(Collection& station, std::int64_t number, const NewState& now) {
  write(station, [&](Collection::Inner& inner) {
    PreparedStatement set(
        inner.connection,
        "UPDATE station_entry SET state = ?, why = ?, theirs = ?, decided_by = ?, decided_at "
        "= ? WHERE id = ?");
    set.bind(1, static_cast<int>(now.state));
    set.bind(2, now.why);
    set.bind(3, now.theirs);
    set.bind(4, now.decided.who);
    set.bind(5, now.decided.at);
    set.bind(6, static_cast<long long>(number));
    set.run();
    return true;
  });
}

void forgetOldOnes(Collection& station) {
  write(station, [&](Collection::Inner& inner) {
    inner.sql() << fmt::format(
        "DELETE FROM station_entry WHERE state = {0} AND id <= (SELECT MAX(id) FROM station_entry) - {1}",
        static_cast<int>(EntryState::Sent), kSentKept);
    return true;
  });
}

NewState stateAfter(const Delivered& delivered) {
  if (delivered.outcome != Delivered::Outcome::Conflict) return {};
  return {.state = EntryState::Conflict,
          .why = delivered.why,
          .theirs = delivered.theirs ? textOf(*delivered.theirs) : ""};
}

}  // namespace

std::vector<WaitingEntry> entriesOf(const Collection& station) {
  return guarded(station.file(), [&] {
    PreparedStatement read(
        station.inner().connection,
        "SELECT id, entry, body, who, at, state, why, theirs FROM station_entry ORDER BY id");
    std::vector<WaitingEntry> entries;
    while (read.step()) {
      WaitingEntry& made = entries.emplace_back(WaitingEntry{.number = read.number(0),
                                                             .id = read.number(1),
                                                             .entry = entryOf(read.text(2)),
                                                             .body = read.text(2),
                                                             .state = static_cast<EntryState>(read.number(5)),
                                                             .why = read.text(6),
                                                             .theirs = signedValueOf(read.text(7))});
      if (!made.entry) continue;
      made.entry->id = made.id;
      made.entry->author = {read.text(3), read.text(4)};
    }
    return entries;
  });
}

WaitingCount countWaiting(const Collection& station) {
  return guarded(station.file(), [&] {
    PreparedStatement read(station.inner().connection,
                           "SELECT state, COUNT(*) FROM station_entry WHERE state IN (0, 1) GROUP BY state");
    WaitingCount count;
    while (read.step())
      (read.number(0) == 0 ? count.waiting : count.conflicts) = static_cast<std::size_t>(read.number(1));
    return count;
  });
}

Kept keepForLater(Collection& station, const KitchenEntry& entry) {
  return write(station, [&](Collection::Inner& inner) {
    const Kept kept = writeDown(station, entry);
    PreparedStatement add(inner.connection,
                          "INSERT INTO station_entry (entry, body, who, at, state, why, theirs, decided_by, "
                          "decided_at) VALUES (?, ?, ?, ?, 0, '', '', '', '')");
    const std::string body = bodyOf(entry);
    add.bind(1, static_cast<long long>(entry.id));
    add.bind(2, body);
    add.bind(3, entry.author.who);
    add.bind(4, entry.author.at);
    add.run();
    return kept;
  });
}

SendReport sendWaiting(Collection& station, Collection& server, const std::string& name) {
  SendReport report;
  for (const WaitingEntry& waiting : entriesOf(station)) {
    if (waiting.state != EntryState::Waiting) continue;
    const Delivered delivered = waiting.entry ? deliver(server, *waiting.entry, name)
                                              : Delivered{.outcome = Delivered::Outcome::Conflict,
                                                          .why = "it cannot be read any more"};
    setState(station, waiting.number, stateAfter(delivered));
    ++(delivered.outcome == Delivered::Outcome::Conflict ? report.conflicts : report.sent);
  }
  forgetOldOnes(station);
  return report;
}

void settle(Collection& station, Collection& server, const std::string& name, std::int64_t number,
            Choice choice, const std::string& why, const Author& author) {
  const auto entries = entriesOf(station);
  const auto found = std::ranges::find(entries, number, &WaitingEntry::number);
  if (found == entries.end() || found->state != EntryState::Conflict)
    refuse(station.inner(), fmt::format("there is no conflict {}", number));
  NewState now{.why = found->why, .theirs = found->theirs ? textOf(*found->theirs) : "", .decided = author};
  if (!found->entry) {
    if (choice == Choice::Mine) refuse(station.inner(), "it cannot be read any more");
    now.state = EntryState::SetAside;
  } else {
    const Delivered delivered = deliver(server, *found->entry, name, choice, why);
    if (delivered.outcome == Delivered::Outcome::SetAside) now.state = EntryState::SetAside;
  }
  setState(station, number, now);
}

}  // namespace tarebowl::store
