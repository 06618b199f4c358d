// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/zoo_intake_command.h"

#include "app/command_line.h"
#include "app/nutrient_list.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/exchange/row_writer.h"
#include "core/exchange/wording.h"
#include "core/store/reading.h"
#include "core/transfer/zoo_intake.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

struct ZooIntakeWords {
  std::string collection{};
  std::optional<quantity::Date> from{};
  std::optional<quantity::Date> to{};  ///< nothing: today
  std::string nutrients{};
  bool csv = false;
};

constexpr int kDaysWithoutFrom = 30;

std::string titleOf(food::NutrientId nutrient) {
  const auto& known = food::describe(nutrient);
  return fmt::format("{} {}", known.tagname, quantity::symbolOf(known.unit));
}

/// Where something of it is not known, it can only be more.
std::string textOf(const std::optional<double>& value, double coverage) {
  return (value && coverage < 1.0 ? "≥ " : "") + exchange::shortNumber(value);
}

std::string asText(const std::vector<transfer::GroupIntake>& groups,
                   const std::vector<food::NutrientId>& nutrients) {
  std::vector<TextTable::Column> columns{{"section"}, {"group"}, {"days known", TextTable::Align::Right}};
  for (const food::NutrientId nutrient : nutrients) {
    columns.push_back({titleOf(nutrient) + " offered", TextTable::Align::Right});
    columns.push_back({"eaten", TextTable::Align::Right});
  }
  TextTable table(columns);
  for (const transfer::GroupIntake& group : groups) {
    std::vector<std::string> row{group.section, group.group,
                                 fmt::format("{} of {}", group.daysKnown, group.days)};
    for (const transfer::NutrientOfGroup& nutrient : group.nutrients) {
      row.push_back(textOf(nutrient.offered, nutrient.coverage));
      row.push_back(textOf(nutrient.eaten, nutrient.coverage));
    }
    table.addRow(row);
  }
  return "Per animal and day, over the days on which all is known\n" + table.text();
}

exchange::Cell cellOf(const std::optional<double>& value) {
  return value ? exchange::Cell(*value) : exchange::Cell(std::string());
}

void writeCsv(const std::vector<transfer::GroupIntake>& groups,
              const std::vector<food::NutrientId>& nutrients, std::ostream& out) {
  exchange::CsvWriter writer(out);
  writer.write({"section", "group", "days", "days_known", "bowls", "nutrient", "unit", "offered", "eaten",
                "coverage"});
  for (const transfer::GroupIntake& group : groups)
    for (std::size_t i = 0; i < nutrients.size(); ++i) {
      const transfer::NutrientOfGroup& of = group.nutrients[i];
      writer.write({group.section, group.group, static_cast<double>(group.days),
                    static_cast<double>(group.daysKnown), static_cast<double>(group.bowls),
                    std::string(food::describe(nutrients[i]).tagname),
                    std::string(quantity::symbolOf(food::describe(nutrients[i]).unit)), cellOf(of.offered),
                    cellOf(of.eaten), of.coverage});
    }
}

int showZooIntake(const ZooIntakeWords& words, const Streams& streams) {
  const quantity::Date to = dayOf(words.to);
  const quantity::Date from =
      words.from.value_or(std::chrono::sys_days(to) - std::chrono::days(kDaysWithoutFrom - 1));
  if (from > to) throw UsageError("--from: expected a day that is not after " + quantity::isoDate(to));
  const std::vector<food::NutrientId> nutrients = nutrientsNamed(words.nutrients);
  const store::Collection collection = openForReading(words.collection);
  const auto groups = store::readTogether(collection, [&](const store::Collection& whole) {
    return transfer::readZooIntake(whole, from, to, nutrients);
  });
  if (words.csv)
    writeCsv(groups, nutrients, streams.out);
  else
    streams.out << asText(groups, nutrients) << '\n' << exchange::kCaution;
  return kDone;
}

}  // namespace

void defineZooIntake(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<ZooIntakeWords>();
  CLI::App& command = *app.add_subcommand("zoo-intake", "What every group ate over some days, side by side");
  addCollectionFile(command, words->collection);
  addDay(command, "--from", words->from, "The first day, YYYY-MM-DD (default: thirty days up to the last)");
  addDay(command, "--to", words->to, "The last day, YYYY-MM-DD (default: today)");
  command.add_option("--nutrient", words->nutrients,
                     "Tagnames parted by commas (default: ENERC,PROCNT,CA,P)");
  command.add_flag("--csv", words->csv, "Print a row for each group and nutrient");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showZooIntake(*words, streams); });
}

}  // namespace tarebowl::app
