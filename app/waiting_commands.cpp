// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/waiting_commands.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/exchange/wording.h"
#include "core/store/server_address.h"
#include "core/store/station_copy.h"
#include "core/store/station_outbox.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <ostream>
#include <string>

namespace tarebowl::app {

namespace {

using store::Choice;
using store::EntryState;
using store::WaitingEntry;

struct SettleWords {
  std::string address{};
  std::int64_t number = 0;
  std::string choice{};
  std::string reason = "weighed while the desk was cut off from the server";
};

/// Nothing where this desk never had a copy.
std::optional<store::Collection> stationOf(const std::string& address) {
  if (!store::isServerAddress(address))
    throw UsageError(address + ": expected the address of a server, postgresql://PERSON@SERVER/DATABASE");
  const auto file = store::stationFile(store::stationFolder(), address);
  std::error_code ignored;
  if (!std::filesystem::exists(file, ignored)) return std::nullopt;
  return store::openStation(file, {whoIsThere(), nowInUtc()});
}

std::string valueText(const store::NotedValue& value) {
  using intake::LeftoverKind;
  const std::string grams = value.grams ? exchange::shortNumber(value.grams->value()) + " g" : "?";
  const std::string lost = value.lost ? exchange::shortNumber(value.lost->value()) + " g" : "?";
  if (!value.kind) return grams;
  switch (*value.kind) {
    case LeftoverKind::Weighed:
      return grams + " left";
    case LeftoverKind::AllEaten:
      return "all eaten";
    case LeftoverKind::NotWeighed:
      return "not weighed";
    case LeftoverKind::Estimated:
      return "about " + grams + " left";
    case LeftoverKind::Spilled:
      return lost + " spilled";
    case LeftoverKind::Stolen:
      return lost + " stolen";
  }
  return grams;
}

std::string whatOf(const store::KitchenEntry& entry) {
  switch (entry.noted) {
    case store::Noted::Weight:
      return entry.food() + ", weighed in";
    case store::Noted::Leftover:
      return entry.food() + ", leftover";
    case store::Noted::Remainder:
      return "left of all together";
  }
  return {};
}

void addRow(TextTable& table, const WaitingEntry& waiting) {
  const bool isConflict = waiting.state == EntryState::Conflict;
  const std::string theirs =
      waiting.theirs ? fmt::format("{}, {}", valueText(waiting.theirs->value), waiting.theirs->by.who) : "";
  const std::string state = isConflict ? "conflict: " + waiting.why : "waits";
  if (!waiting.entry)
    return table.addRow({std::to_string(waiting.number), "?", "?", "?", theirs, "?", state});
  const store::KitchenEntry& entry = *waiting.entry;
  table.addRow({std::to_string(waiting.number),
                fmt::format("{} {}", quantity::isoDate(entry.bowl.key.day), entry.bowl.label), whatOf(entry),
                valueText(entry.value), theirs, entry.author.who, state});
}

int listWaiting(const std::string& address, const Streams& streams) {
  const auto station = stationOf(address);
  if (!station) {
    streams.out << "this desk has no copy of the collection: nothing waits\n";
    return kDone;
  }
  if (const auto copy = store::stationCopy(*station))
    streams.out << fmt::format("copy of {}, {} to {}\n", copy->takenAt, quantity::isoDate(copy->from),
                               quantity::isoDate(copy->until));
  const store::WaitingCount count = store::countWaiting(*station);
  if (count == store::WaitingCount{}) {
    streams.out << "nothing waits for the server\n";
    return kDone;
  }
  TextTable table({{"number", TextTable::Align::Right},
                   {"bowl"},
                   {"what"},
                   {"yours", TextTable::Align::Right},
                   {"on the server"},
                   {"written by"},
                   {"state"}});
  for (const WaitingEntry& entry : store::entriesOf(*station))
    if (entry.state == EntryState::Waiting || entry.state == EntryState::Conflict) addRow(table, entry);
  streams.out << table.text();
  return kDone;
}

int send(const std::string& address, const Streams& streams) {
  auto station = stationOf(address);
  if (!station) {
    streams.out << "this desk has no copy of the collection: nothing waits\n";
    return kDone;
  }
  store::Collection server = store::Collection::open(address, nowInUtc(), openingByHand());
  const store::SendReport report = store::sendWaiting(*station, server, "tarebowl server send");
  const std::size_t conflicts = store::countWaiting(*station).conflicts;
  streams.out << fmt::format("{} sent\n", exchange::counted(report.sent, "entry", "entries"));
  if (conflicts > 0)
    streams.out << fmt::format("{} need a choice: tarebowl server waiting, then tarebowl server settle\n",
                               exchange::counted(conflicts, "entry", "entries"));
  return kDone;
}

int settleOne(const SettleWords& words, const Streams& streams) {
  auto station = stationOf(words.address);
  if (!station) throw UsageError("this desk has no copy of the collection: nothing is to be settled");
  store::Collection server = store::Collection::open(words.address, nowInUtc(), openingByHand());
  const bool isMine = words.choice == "mine";
  store::settle(*station, server, "tarebowl server settle", words.number,
                isMine ? Choice::Mine : Choice::Theirs, words.reason, {whoIsThere(), nowInUtc()});
  streams.out << fmt::format("{}: what {} counts\n", words.number,
                             isMine ? "this desk wrote down" : "the server has");
  return kDone;
}

CLI::Option* addAddress(CLI::App& command, std::string& address) {
  return command.add_option("ADDRESS", address, "postgresql://PERSON@SERVER/DATABASE")->required();
}

}  // namespace

void defineWaiting(CLI::App& server, Run& chosen) {
  const auto address = std::make_shared<std::string>();
  CLI::App& waiting =
      *server.add_subcommand("waiting", "List what this desk wrote down that the server does not have yet");
  addAddress(waiting, *address);
  runWhenNamed(waiting, chosen, [address](const Streams& streams) { return listWaiting(*address, streams); });

  CLI::App& sending =
      *server.add_subcommand("send", "Send what waits on this desk, in order, each entry once");
  addAddress(sending, *address);
  runWhenNamed(sending, chosen, [address](const Streams& streams) { return send(*address, streams); });

  const auto words = std::make_shared<SettleWords>();
  CLI::App& settling =
      *server.add_subcommand("settle", "Say what counts where the server has something else than this desk");
  addAddress(settling, words->address);
  settling.add_option("NUMBER", words->number, "Of the entry, as tarebowl server waiting lists it")
      ->required();
  settling.add_option("WHICH", words->choice, "What counts; the other one is kept")
      ->required()
      ->check(CLI::IsMember({"mine", "theirs"}));
  settling.add_option("--reason", words->reason, "Of the correction that yours becomes");
  runWhenNamed(settling, chosen, [words](const Streams& streams) { return settleOne(*words, streams); });
}

}  // namespace tarebowl::app
