// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pans_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/exchange/feeding_file.h"
#include "core/exchange/wording.h"
#include "core/intake/pan_doubt.h"
#include "core/store/food_reading.h"
#include "core/store/swap_verbs.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using intake::ControlPan;
using intake::PanDoubt;

struct PansWords {
  std::string collection{};
  std::string table{};  ///< CSV to take in; empty: the pans are shown
  std::optional<quantity::Date> from{};
  std::optional<quantity::Date> day{};
  bool confirm = false;  ///< keep what would be asked about
  bool asTable = false;
};

std::string_view textOf(PanDoubt doubt) {
  switch (doubt) {
    case PanDoubt::NothingAtStart:
      return "was put out empty: it says nothing";
    case PanDoubt::NothingLeft:
      return "came back empty: it says nothing of water";
    case PanDoubt::GainedMuch:
      return "came back more than a tenth heavier: rain, or the weights the wrong way round?";
    case PanDoubt::LostMuch:
      return "lost more than half: did an animal reach it?";
    case PanDoubt::TwicePut:
      break;
  }
  return "is there already: both would count";
}

std::string whatOf(const ControlPan& pan) {
  return fmt::format("{} at {} on {}", pan.food.empty() ? pan.foodClass : pan.food, pan.place,
                     quantity::isoDate(pan.day));
}

std::vector<ControlPan> pansBetween(const store::Collection& collection, quantity::Date from,
                                    quantity::Date to) {
  std::vector<ControlPan> pans;
  for (const store::StoredControlPan& pan : store::controlPansBetween(collection, from, to))
    pans.push_back(pan.record);
  return pans;
}

double lossOf(const ControlPan& pan) {
  return 1.0 - pan.end / pan.start;
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
  for (const ControlPan& pan : pansBetween(collection, words.from.value_or(to), to)) {
    json["pans"].push_back({{"day", quantity::isoDate(pan.day)},
                            {"place", pan.place},
                            {"food", pan.food},
                            {"food_class", pan.foodClass},
                            {"start_g", pan.start.value()},
                            {"end_g", pan.end.value()},
                            {"water_loss", lossOf(pan)},
                            {"by", pan.who}});
    table.addRow({quantity::isoDate(pan.day), pan.place, pan.food.empty() ? "any " + pan.foodClass : pan.food,
                  exchange::shortNumber(pan.start.value()), exchange::shortNumber(pan.end.value()),
                  exchange::percentText(lossOf(pan)), pan.who});
  }
  streams.out << (words.asTable ? table.text() : toText(json));
  return kDone;
}

/// What is wrong with the pans of a table, or to be asked; one line each.
struct Judged {
  std::string wrong{};
  std::string asked{};
};
Judged judge(const store::Collection& collection, const std::vector<ControlPan>& pans) {
  Judged judged;
  std::vector<ControlPan> before;
  for (const ControlPan& pan : pans) {
    if (!pan.food.empty() && !store::findFood(collection, pan.food))
      judged.wrong += fmt::format("{}: there is no food {}\n", whatOf(pan), pan.food);
    std::vector<ControlPan> others = pansBetween(collection, pan.day, pan.day);
    others.insert(others.end(), before.begin(), before.end());
    const auto doubt = intake::doubtAbout(pan, others);
    if (doubt)
      (doubt == PanDoubt::NothingAtStart ? judged.wrong : judged.asked) +=
          fmt::format("{} {}\n", whatOf(pan), textOf(*doubt));
    before.push_back(pan);
  }
  return judged;
}

int takePans(const PansWords& words, const Streams& streams) {
  std::vector<ControlPan> pans = exchange::readControlPans(words.table);
  store::Collection collection = openForWriting(words.collection);
  const Judged judged = judge(collection, pans);
  streams.err << judged.wrong << judged.asked;
  if (!judged.wrong.empty() || (!judged.asked.empty() && !words.confirm)) {
    streams.err << "nothing was written; put the table right"
                << (judged.wrong.empty() ? ", or keep it as it is with --confirm\n" : "\n");
    return kUnreadable;
  }
  const store::Author author{whoIsThere(), nowInUtc()};
  for (ControlPan& pan : pans) {
    if (pan.who.empty()) pan.who = author.who;
    (void)store::addControlPan(collection, pan, author);
  }
  streams.out << exchange::counted(pans.size(), "control pan", "control pans") << " kept\n";
  return kDone;
}

}  // namespace

void definePans(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<PansWords>();
  CLI::App& command =
      *app.add_subcommand("pans",
                          "Control pans of some days, or a table of them taken in: CSV with the titles "
                          "date,place,food,food_class,start_g,end_g,by");
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
