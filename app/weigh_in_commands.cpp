// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/weigh_in_commands.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/day_sheets.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "core/exchange/kitchen_tables.h"
#include "core/exchange/wording.h"
#include "core/store/feeding_reading.h"
#include "core/store/feeding_verbs.h"
#include "core/transfer/kitchen_day.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <istream>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using intake::WeighingDoubt;

struct WeighInWords {
  std::string collection{};
  std::string table{};  ///< CSV file, "-" for standard input
  std::optional<quantity::Date> day{};
  bool confirm = false;  ///< keep what would be asked about
};

std::string_view textOf(WeighingDoubt doubt) {
  switch (doubt) {
    case WeighingDoubt::BelowNothing:
      return "is below nothing: tare the empty bowl and weigh again";
    case WeighingDoubt::TenTimes:
      return "is about ten times the plan: is the decimal point where it belongs?";
    case WeighingDoubt::TenthOf:
      return "is about a tenth of the plan: is the decimal point where it belongs?";
    case WeighingDoubt::NotInGrams:
      return "is about the plan in ounces: set the scale to grams";
    case WeighingDoubt::Under:
      return "is under the plan by more than the tolerance";
    case WeighingDoubt::Over:
      return "is over the plan by more than the tolerance";
    case WeighingDoubt::AsBowlBefore:
      return "is what the bowl before weighed within the same minute";
    case WeighingDoubt::ClockWentBack:
      return "was read before an earlier weight: is the clock right?";
    case WeighingDoubt::DayToCome:
      return "is of a day to come";
  }
  return "is doubtful";
}

template <class Lines>
Lines readTable(const std::string& file, const Streams& streams,
                Lines (*read)(std::istream&, const std::string&)) {
  if (file == "-") return read(streams.in, "standard input");
  std::ifstream table(file, std::ios::binary);
  if (!table) throw UsageError(file + ": cannot be read");
  return read(table, file);
}

int nothingWritten(std::ostream& err, const char* advice) {
  err << "nothing was written; " << advice << '\n';
  return kUnreadable;
}

void tellKept(const Streams& streams, const std::vector<store::Kept>& kept, std::size_t corrected) {
  const auto second = static_cast<std::size_t>(std::ranges::count(kept, store::Kept::Second));
  streams.out << fmt::format("{} kept, {} corrected\n", exchange::counted(kept.size(), "entry", "entries"),
                             corrected);
  if (second > 0)
    streams.out << fmt::format(
        "{} had an entry already: both are kept, and the first one counts until it is corrected\n", second);
}

std::string askedAbout(const exchange::WeightLine& line, const DaySheets::Place& place,
                       const transfer::JudgedBy& by) {
  std::string text;
  for (const WeighingDoubt doubt : transfer::doubtsIn(*place.bowl, *place.item, line.actual, nowInUtc(), by))
    text += fmt::format(
        "line {}: {} g {} for {}, planned {} g ± {} g, {}\n", line.line, line.actual.value(),
        place.item->food, place.bowl->bowl.label, exchange::shortNumber(place.item->planned.value()),
        exchange::shortNumber(transfer::toleranceIn(*place.bowl, place.item->food, by).value()),
        textOf(doubt));
  return text;
}

int weighInTable(const WeighInWords& words, const Streams& streams) {
  const auto lines = readTable(words.table, streams, &exchange::readWeights);
  store::Collection collection = openForWriting(words.collection);
  const transfer::JudgedBy by{store::toleranceRule(collection), transfer::kitchenFoods(collection)};
  DaySheets sheets(collection, dayOf(words.day), words.table);
  std::vector<store::WeightRead> weights;
  std::vector<std::pair<store::WeightRead, std::string>> corrections;
  std::string asked;
  for (const exchange::WeightLine& line : lines) {
    const auto place = sheets.find(line.line, line.group, line.bowl, line.food);
    if (!place) continue;
    if (place->item == nullptr) {
      sheets.wrong(line.line, "a bowl is weighed in food by food");
      continue;
    }
    asked += askedAbout(line, *place, by);
    const store::WeightRead weight{{place->bowl->bowl.key, place->item->item}, line.actual};
    if (line.reason.empty())
      weights.push_back(weight);
    else
      corrections.emplace_back(weight, line.reason);
  }
  if (!sheets.isRight(streams.err)) return nothingWritten(streams.err, "put the table right");
  streams.err << asked;
  if (!asked.empty() && !words.confirm)
    return nothingWritten(streams.err, "put the table right, or keep it as it is with --confirm");
  const store::Author author{whoIsThere(), nowInUtc()};
  sheets.open(collection, author);
  const auto kept = store::weighIn(collection, weights, author);
  for (const auto& [weight, reason] : corrections)
    (void)store::correctWeight(collection, weight, reason, author);
  tellKept(streams, kept, corrections.size());
  return kDone;
}

int takeLeftovers(const WeighInWords& words, const Streams& streams) {
  const auto lines = readTable(words.table, streams, &exchange::readLeftovers);
  store::Collection collection = openForWriting(words.collection);
  DaySheets sheets(collection, dayOf(words.day), words.table);
  struct Found {
    DaySheets::Place place{};
    const exchange::LeftoverLine* line = nullptr;
  };
  std::vector<Found> found;
  for (const exchange::LeftoverLine& line : lines) {
    const auto place = sheets.find(line.line, line.group, line.bowl, line.food);
    if (!place) continue;
    if (place->item == nullptr && (line.kind != intake::LeftoverKind::Weighed || !line.left))
      sheets.wrong(line.line, "what is left of all together is weighed: how is weighed, with left_g");
    if (!place->bowl->opened) sheets.wrong(line.line, "this bowl was never put on a sheet");
    found.push_back({*place, &line});
  }
  if (!sheets.isRight(streams.err)) return nothingWritten(streams.err, "put the table right");
  const store::Author author{whoIsThere(), nowInUtc()};
  std::vector<store::LeftoverFound> leftovers;
  std::vector<store::Kept> remainders;
  std::size_t corrected = 0;
  for (const auto& [place, line] : found) {
    const intake::BowlKey& bowl = place.bowl->bowl.key;
    const bool corrects = !line->reason.empty();
    corrected += corrects ? 1 : 0;
    if (place.item == nullptr) {
      if (corrects)
        (void)store::correctRemainder(collection, bowl, *line->left, line->reason, author);
      else
        remainders.push_back(store::noteRemainder(collection, bowl, *line->left, author));
      continue;
    }
    const store::LeftoverFound leftover{{bowl, place.item->item}, line->kind, line->left, line->lost};
    if (corrects)
      (void)store::correctLeftover(collection, leftover, line->reason, author);
    else
      leftovers.push_back(leftover);
  }
  auto kept = store::noteLeftovers(collection, leftovers, author);
  kept.insert(kept.end(), remainders.begin(), remainders.end());
  tellKept(streams, kept, corrected);
  return kDone;
}

void addCollectionAndTable(CLI::App& command, WeighInWords& words) {
  addCollectionFile(command, words.collection);
  command.add_option("TABLE", words.table, "NAME.csv, or - for standard input")->required();
}

void addDayOfSheet(CLI::App& command, WeighInWords& words) {
  addDay(command, "--day", words.day, "The day of the sheet, YYYY-MM-DD (default: today)");
}

}  // namespace

void defineWeighIn(CLI::App& app, Run& chosen) {
  const auto weights = std::make_shared<WeighInWords>();
  CLI::App& weighIn = *app.add_subcommand(
      "weigh-in", "Write down what bowls weigh: CSV with the titles group,bowl,food,g,reason");
  addCollectionAndTable(weighIn, *weights);
  weighIn.add_flag("--confirm", weights->confirm, "Keep weights as they are that would be asked about");
  addDayOfSheet(weighIn, *weights);
  runWhenNamed(weighIn, chosen,
               [weights](const Streams& streams) { return weighInTable(*weights, streams); });

  const auto leftovers = std::make_shared<WeighInWords>();
  CLI::App& left = *app.add_subcommand(
      "leftovers", "Write down what was left: CSV with the titles group,bowl,food,how,left_g,lost_g,reason");
  addCollectionAndTable(left, *leftovers);
  addDayOfSheet(left, *leftovers);
  runWhenNamed(left, chosen,
               [leftovers](const Streams& streams) { return takeLeftovers(*leftovers, streams); });
}

}  // namespace tarebowl::app
