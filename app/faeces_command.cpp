// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/faeces_command.h"

#include "app/author.h"
#include "app/command_line.h"
#include "app/json_text.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/exchange/wording.h"
#include "core/store/faeces_verbs.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <charconv>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using intake::FaecesCollected;
using intake::FaecesValue;

struct FaecesWords {
  std::string collection{};
  std::string group{};
  std::optional<quantity::Date> from{};
  std::optional<quantity::Date> to{};    ///< nothing: the same day
  std::optional<double> fresh{};         ///< g; nothing: what there is is shown
  std::optional<double> dryMatter{};     ///< g per 100 g fresh
  std::vector<std::string> nutrients{};  ///< "CA=1850" or "CA=1850±90"
  std::string source{};
  std::string note{};
  bool table = false;
};

double numberIn(std::string_view text, const std::string& all) {
  double number = 0.0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size())
    throw UsageError("--nutrient: expected TAGNAME=NUMBER or TAGNAME=NUMBER±SD, found " + all);
  return number;
}

/// "CA=1850±90"
FaecesValue valueFrom(const std::string& text) {
  constexpr std::string_view kPlusMinus = "±";
  const std::string_view all(text);
  const std::size_t equals = std::min(all.find('='), all.size());
  const auto nutrient = food::findByTagname(all.substr(0, equals));
  if (!nutrient)
    throw UsageError(fmt::format("--nutrient: there is no {}; did you mean {}? (see tarebowl nutrients)",
                                 all.substr(0, equals), food::nearestTagname(all.substr(0, equals))));
  const std::string_view rest = equals < all.size() ? all.substr(equals + 1) : std::string_view();
  const std::size_t scatter = rest.find(kPlusMinus);
  FaecesValue value{.nutrient = *nutrient};
  value.per100gDryMatter = numberIn(rest.substr(0, scatter), text);
  if (scatter != std::string_view::npos) value.sd = numberIn(rest.substr(scatter + kPlusMinus.size()), text);
  return value;
}

FaecesCollected collectedBy(const FaecesWords& words, const store::Author& author) {
  if (words.group.empty()) throw UsageError("--group: whose faeces are they?");
  if (!words.from) throw UsageError("--from: on which day did the collection begin?");
  if (!words.dryMatter)
    throw UsageError("--dry-matter: digestibility is worked out on dry matter; what is its share?");
  FaecesCollected faeces{.group = words.group,
                         .from = *words.from,
                         .until = words.to.value_or(*words.from),
                         .fresh = quantity::Grams(*words.fresh),
                         .dryMatter = *words.dryMatter,
                         .source = words.source,
                         .who = author.who,
                         .note = words.note};
  for (const std::string& text : words.nutrients) faeces.values.push_back(valueFrom(text));
  return faeces;
}

std::string valuesText(const FaecesCollected& faeces) {
  std::string text;
  for (const FaecesValue& value : faeces.values)
    text += fmt::format("{}{} {}{} {}", text.empty() ? "" : ", ", food::describe(value.nutrient).tagname,
                        exchange::shortNumber(value.per100gDryMatter),
                        value.sd ? " ± " + exchange::shortNumber(*value.sd) : std::string(),
                        quantity::symbolOf(food::describe(value.nutrient).unit));
  return text;
}

nlohmann::ordered_json jsonOf(const FaecesCollected& faeces) {
  nlohmann::ordered_json json{{"group", faeces.group},
                              {"from", quantity::isoDate(faeces.from)},
                              {"to", quantity::isoDate(faeces.until)},
                              {"fresh_g", faeces.fresh.value()},
                              {"dry_matter_per_100g", faeces.dryMatter},
                              {"values", nlohmann::ordered_json::array()},
                              {"source", faeces.source},
                              {"by", faeces.who}};
  for (const FaecesValue& value : faeces.values) {
    nlohmann::ordered_json entry{{"nutrient", food::describe(value.nutrient).tagname},
                                 {"per_100g_dry_matter", value.per100gDryMatter}};
    if (value.sd) entry["sd"] = *value.sd;
    json["values"].push_back(std::move(entry));
  }
  return json;
}

int showFaeces(const FaecesWords& words, const Streams& streams) {
  store::Collection collection =
      words.fresh ? openForWriting(words.collection) : openForReading(words.collection);
  if (words.fresh) {
    const store::Author author{whoIsThere(), nowInUtc()};
    (void)store::addFaeces(collection, collectedBy(words, author), author);
  }
  const std::string group = groupOf(collection, words.group, dayOf(words.from)).group.record.code;
  nlohmann::ordered_json json{{"format", "tarebowl-faeces/1"}, {"faeces", nlohmann::ordered_json::array()}};
  constexpr auto kRight = TextTable::Align::Right;
  TextTable table(
      {{"from"}, {"to"}, {"fresh, g", kRight}, {"DM, g/100 g", kRight}, {"per 100 g DM"}, {"source"}});
  for (const store::StoredFaeces& stored : store::faecesOfGroup(collection, group)) {
    const FaecesCollected& faeces = stored.record;
    json["faeces"].push_back(jsonOf(faeces));
    table.addRow({quantity::isoDate(faeces.from), quantity::isoDate(faeces.until),
                  exchange::shortNumber(faeces.fresh.value()), exchange::shortNumber(faeces.dryMatter),
                  valuesText(faeces), faeces.source});
  }
  streams.out << (words.table ? table.text() : toText(json));
  return kDone;
}

}  // namespace

void defineFaeces(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<FaecesWords>();
  CLI::App& command = *app.add_subcommand(
      "faeces", "Faeces of a group that were collected and analysed; with --fresh they are written down");
  addCollectionFile(command, words->collection);
  addGroup(command, words->group)->required();
  addDay(command, "--from", words->from, "The first day of the collection, YYYY-MM-DD");
  addDay(command, "--to", words->to, "The last day (default: the first)");
  command.add_option("--fresh", words->fresh, "Grams as found, of all animals and days together");
  command.add_option("--dry-matter", words->dryMatter, "Grams of dry matter per 100 g fresh")
      ->needs("--fresh");
  command
      .add_option("--nutrient", words->nutrients,
                  "TAGNAME=NUMBER or TAGNAME=NUMBER±SD per 100 g of dry matter; again for each nutrient")
      ->needs("--fresh");
  command.add_option("--source", words->source, "The report that it comes from");
  command.add_option("--note", words->note, "Kept with it");
  addTableOrJson(command, words->table);
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showFaeces(*words, streams); });
}

}  // namespace tarebowl::app
