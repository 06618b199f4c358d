// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pans_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/pan_table.h"
#include "app/text_table.h"
#include "core/exchange/feeding_file.h"
#include "core/exchange/wording.h"
#include "core/store/swap_verbs.h"
#include "core/store/together.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using intake::ControlPan;

struct PansWords {
  std::string collection{};
  std::string table{};  ///< CSV to take in; empty: the pans are shown
  std::optional<quantity::Date> from{};
  std::optional<quantity::Date> day{};
  bool confirm = false;  ///< keep what would be asked about
  bool asTable = false;
};

/// Nothing of a pan that still stands.
std::optional<double> lossOf(const ControlPan& pan) {
  return pan.end ? std::optional(1.0 - *pan.end / pan.start) : std::nullopt;
}

template <class Number>
nlohmann::ordered_json numberOrNull(const std::optional<Number>& number) {
  return number ? nlohmann::ordered_json(*number) : nlohmann::ordered_json(nullptr);
}

nlohmann::ordered_json hourOrNull(const std::string& at) {
  return at.empty() ? nlohmann::ordered_json(nullptr) : nlohmann::ordered_json(at);
}

int showPans(const PansWords& words, const Streams& streams) {
  const store::Collection collection = openForReading(words.collection);
  const quantity::Date to = dayOf(words.day);
  nlohmann::ordered_json json{{"format", "tarebowl-pans/1"}, {"pans", nlohmann::ordered_json::array()}};
  constexpr auto kRight = TextTable::Align::Right;
  TextTable table({{"day"},
                   {"place"},
                   {"food"},
                   {"put out, g", kRight},
                   {"came back, g", kRight},
                   {"lost", kRight},
                   {"by"}});
  for (const auto& [id, revision, pan] : store::controlPansBetween(collection, words.from.value_or(to), to)) {
    const std::optional<double> loss = lossOf(pan);
    const auto end = pan.end ? std::optional(pan.end->value()) : std::nullopt;
    json["pans"].push_back({{"day", quantity::isoDate(pan.day)},
                            {"place", pan.place},
                            {"food", pan.food},
                            {"food_class", pan.foodClass},
                            {"start_g", pan.start.value()},
                            {"end_g", numberOrNull(end)},
                            {"water_loss", numberOrNull(loss)},
                            {"start_at", hourOrNull(pan.startAt)},
                            {"end_at", hourOrNull(pan.endAt)},
                            {"by", pan.who}});
    table.addRow({quantity::isoDate(pan.day), pan.place, pan.food.empty() ? "any " + pan.foodClass : pan.food,
                  exchange::shortNumber(pan.start.value()),
                  end ? exchange::shortNumber(*end) : "still stands",
                  loss ? exchange::percentText(*loss) : "?", pan.who});
  }
  streams.out << (words.asTable ? table.text() : toText(json));
  return kDone;
}

/// A pan that still stands is written down as it is put out, one that closes it as it came back: then the
/// hour is now. Of a pan whose both weights a table brings, nobody said the hours.
void write(store::Collection& collection, PanEntry& entry, const store::Author& author) {
  intake::ControlPan& pan = entry.pan;
  if (pan.who.empty()) pan.who = author.who;
  if (!pan.end && author.at.starts_with(quantity::isoDate(pan.day))) pan.startAt = author.at;
  if (!entry.closes) return (void)store::addControlPan(collection, pan, author);
  intake::ControlPan closed = entry.closes->record;
  closed.end = pan.end;
  closed.endAt = author.at;
  closed.who = pan.who;
  (void)store::editControlPan(collection, entry.closes->id, entry.closes->revision, closed, author);
}

int takePans(const PansWords& words, const Streams& streams) {
  const std::vector<ControlPan> pans = exchange::readControlPans(words.table);
  store::Collection collection = openForWriting(words.collection);
  JudgedPans judged = judgePans(collection, pans);
  streams.err << judged.wrong << judged.asked;
  if (!judged.wrong.empty() || (!judged.asked.empty() && !words.confirm)) {
    streams.err << "nothing was written; put the table right"
                << (judged.wrong.empty() ? ", or keep it as it is with --confirm\n" : "\n");
    return kUnreadable;
  }
  const store::Author author{whoIsThere(), nowInUtc()};
  std::size_t standing = 0;
  store::together(collection, [&] {
    for (PanEntry& entry : judged.entries) {
      standing += entry.pan.end ? 0 : 1;
      write(collection, entry, author);
    }
  });
  streams.out << exchange::counted(pans.size(), "control pan", "control pans") << " kept"
              << (standing > 0 ? fmt::format(", {} still to be weighed when it comes back", standing)
                               : std::string())
              << '\n';
  return kDone;
}

}  // namespace

void definePans(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<PansWords>();
  CLI::App& command = *app.add_subcommand(
      "pans",
      "Control pans of some days, or a table of them taken in: CSV with the titles "
      "date,place,food,food_class,start_g,end_g,by. Without end_g a pan still stands; the "
      "same line with it, another day, says what came back");
  addCollectionFile(command, words->collection);
  command.add_option("TABLE", words->table, "Pans to take in; without it those that there are");
  addDay(command, "--from", words->from, "The first day; without it only --day");
  addDay(command, words->day);
  command.add_flag("--confirm", words->confirm, "Keep pans that would be asked about");
  addTableOrJson(command, words->asTable);
  runWhenNamed(command, chosen, [words](const Streams& streams) {
    return words->table.empty() ? showPans(*words, streams) : takePans(*words, streams);
  });
}

}  // namespace tarebowl::app
