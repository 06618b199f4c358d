// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lots_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/store/lot_verbs.h"

#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct LotsWords {
  std::string collection{};
  std::string food{};
  std::string lot{};
  std::string note{};
  std::optional<quantity::Date> day{};
  bool table = false;
};

int showLots(const LotsWords& words, const Streams& streams) {
  const bool begins = !words.lot.empty();
  if (begins && words.food.empty()) throw UsageError("--lot: --food must say of which food");
  store::Collection collection = begins ? openForWriting(words.collection) : openForReading(words.collection);
  if (begins) {
    const store::Author author{whoIsThere(), nowInUtc()};
    (void)store::addLot(collection, {words.food, words.lot, dayOf(words.day), author.who, words.note},
                        author);
  }
  nlohmann::ordered_json json{{"format", "tarebowl-lots/1"}, {"lots", nlohmann::ordered_json::array()}};
  TextTable table({{"food"}, {"lot"}, {"fed from"}, {"by"}, {"note"}});
  for (const store::StoredLot& stored : store::listLots(collection)) {
    const intake::FoodLot& lot = stored.record;
    if (!words.food.empty() && lot.food != words.food) continue;
    const std::string from = quantity::isoDate(lot.from);
    json["lots"].push_back(
        {{"food", lot.food}, {"lot", lot.lot}, {"from", from}, {"by", lot.who}, {"note", lot.note}});
    table.addRow({lot.food, lot.lot, from, lot.who, lot.note});
  }
  streams.out << (words.table ? table.text() : toText(json));
  return kDone;
}

}  // namespace

void defineLots(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<LotsWords>();
  CLI::App& command = *app.add_subcommand("lots", "Lots that foods are fed from; with --lot one begins");
  addCollectionFile(command, words->collection);
  command.add_option("--food", words->food, "Code of a food: only its lots");
  command.add_option("--lot", words->lot, "A lot of --food that is fed from --day on, as the box names it");
  command.add_option("--note", words->note, "Kept with the lot");
  addDay(command, words->day);
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showLots(*words, streams); });
}

}  // namespace tarebowl::app
