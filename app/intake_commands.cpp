// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/intake_commands.h"

#include "app/command_line.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "core/exchange/intake_report.h"
#include "core/exchange/wording.h"
#include "core/transfer/intake_period.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <ostream>

namespace tarebowl::app {

namespace {

using Align = TextTable::Align;
using exchange::IntakeToWrite;
using exchange::shortNumber;

constexpr int kDaysWithoutFrom = 28;

struct IntakeWords {
  std::string collection{};
  std::string group{};
  std::optional<quantity::Date> from{};
  std::optional<quantity::Date> to{};  ///< nothing: today
  std::string nutrients{};             ///< tagnames parted by commas
  bool table = false;
  bool csv = false;  ///< for a spreadsheet
};

/// Tagnames parted by commas; energy, protein, calcium and phosphorus where none is named.
std::vector<food::NutrientId> nutrientsOf(const std::string& text) {
  if (text.empty())
    return {food::nutrients::energy(), food::nutrients::protein(), food::nutrients::calcium(),
            food::nutrients::phosphorus()};
  std::vector<food::NutrientId> nutrients;
  std::size_t begin = 0;
  while (begin <= text.size()) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    const std::string tagname = text.substr(begin, end - begin);
    const auto nutrient = food::findByTagname(tagname);
    if (!nutrient)
      throw UsageError(fmt::format("--nutrient: there is no {}; did you mean {}? (see tarebowl nutrients)",
                                   tagname.empty() ? "nutrient without a name" : tagname,
                                   food::nearestTagname(tagname)));
    nutrients.push_back(*nutrient);
    begin = end + 1;
  }
  return nutrients;
}

IntakeToWrite workOut(const IntakeWords& words, const store::Collection& collection) {
  const quantity::Date to = dayOf(words.to);
  const quantity::Date from =
      words.from.value_or(std::chrono::sys_days(to) - std::chrono::days(kDaysWithoutFrom - 1));
  if (from > to) throw UsageError("--from: expected a day that is not after " + quantity::isoDate(to));
  const std::string group = groupOf(collection, words.group, to).group.record.code;
  const auto period = transfer::readIntake(collection, group, from, to).value();
  IntakeToWrite made;
  made.group = group;
  made.groupName = period.group.group.record.name;
  made.from = from;
  made.to = to;
  made.invented = period.invented;
  made.pans = period.pans;
  made.unknownFoods = period.unknownFoods;
  made.problem = period.problem;
  made.report = intake::reportStudy(period.problem, period.eaten, nutrientsOf(words.nutrients));
  made.fractions = intake::learnFractions(period.eaten);
  made.choices = intake::choiceByLabel(period.eaten, {.leaveOutClasses = transfer::classesWithoutPans()});
  made.calciumToPhosphorus = intake::dailyRatio(period.eaten, contentsOf(period, food::nutrients::calcium()),
                                                contentsOf(period, food::nutrients::phosphorus()));
  made.bowls = period.eaten;
  return made;
}

std::string intervalText(const std::optional<intake::MeanOfDays>& mean) {
  if (!mean || !mean->interval) return "?";
  return fmt::format("{} … {}", shortNumber(mean->interval->low), shortNumber(mean->interval->high));
}

std::string foodsText(const IntakeToWrite& intake) {
  TextTable table({{"food"},
                   {"offered g", Align::Right},
                   {"left", Align::Right},
                   {"as offered", Align::Right},
                   {"eaten g", Align::Right},
                   {"eaten", Align::Right},
                   {"bowls", Align::Right},
                   {"not known", Align::Right}});
  for (const intake::FoodReport& food : intake.report.foods) {
    table.addRow({food.food, fmt::format("{:.1f}", food.offered), fmt::format("{:.1f}", food.left),
                  fmt::format("{:.1f}", food.leftAsOffered), fmt::format("{:.1f}", food.eaten),
                  food.offered > 0.0 ? exchange::percentText(food.eaten / food.offered) : "?",
                  std::to_string(food.bowls), std::to_string(food.bowlsNotKnown)});
  }
  return table.text() + '\n';
}

std::string choiceText(const intake::BowlChoice& bowl) {
  if (bowl.choice.foods.size() < 2) return {};
  TextTable table({{"picked first"},
                   {"alpha", Align::Right},
                   {"95 %", Align::Right},
                   {"Ivlev's E", Align::Right},
                   {"bowls", Align::Right},
                   {"eaten up in", Align::Right}});
  for (const intake::FoodChoice& food : bowl.choice.foods) {
    const std::string between = food.interval
                                    ? fmt::format("{:.2f} … {:.2f}", food.interval->low, food.interval->high)
                                    : std::string("?");
    table.addRow(
        {food.food,
         food.alpha ? fmt::format("{:.2f}", *food.alpha) : std::string(exchange::symbolOf(food.state)),
         food.alpha ? between : "-", food.ivlev ? fmt::format("{:.2f}", *food.ivlev) : "?",
         std::to_string(food.bowls), std::to_string(food.bowlsAllEaten)});
  }
  return fmt::format(
      "{}: Manly's alpha from {} (neutral {}); {} left out because a food was eaten up, {} "
      "because not all is known\n{}\n",
      bowl.label, exchange::counted(bowl.choice.bowls, "bowl", "bowls"), shortNumber(bowl.choice.neutral),
      bowl.choice.bowlsEmptied, bowl.choice.bowlsNotKnown, table.text());
}

std::string nutrientsText(const IntakeToWrite& intake) {
  TextTable table({{"eaten per animal and day"},
                   {"mean", Align::Right},
                   {"unit"},
                   {"95 %", Align::Right},
                   {"days", Align::Right},
                   {"known of", Align::Right}});
  for (const intake::NutrientReport& nutrient : intake.report.nutrients) {
    double coverage = 1.0;
    for (const intake::DayIntake& day : nutrient.days) coverage = std::min(coverage, day.coverage);
    const auto& mean = nutrient.perAnimal;
    table.addRow({food::describe(nutrient.nutrient).name,
                  mean ? (coverage < 1.0 ? "≥ " : "") + shortNumber(mean->mean) : "?",
                  std::string(quantity::symbolOf(food::describe(nutrient.nutrient).unit)), intervalText(mean),
                  mean ? std::to_string(mean->days) : "0", exchange::percentText(coverage)});
  }
  return table.text() + '\n';
}

std::string targetsText(const IntakeToWrite& intake) {
  if (!intake.report.asEaten) return {};
  TextTable table({{"target"}, {"zone"}, {"offered", Align::Right}, {""}, {"eaten", Align::Right}, {""}});
  for (std::size_t i = 0; i < intake.report.asEaten->targets.size(); ++i) {
    const diet::TargetBalance& eaten = intake.report.asEaten->targets[i];
    const diet::TargetBalance& offered = intake.report.asOffered->targets[i];
    table.addRow({eaten.id, exchange::zoneText(eaten.min, eaten.max), shortNumber(offered.value),
                  std::string(exchange::stateText(offered.state)), shortNumber(eaten.value),
                  std::string(exchange::stateText(eaten.state))});
  }
  return table.text() + '\n';
}

std::string findingsText(const IntakeToWrite& intake) {
  std::string text;
  std::size_t borrowed = 0;
  for (const intake::EatenBowl& bowl : intake.bowls)
    for (const intake::Finding& finding : bowl.findings) {
      borrowed += finding.kind == intake::FindingKind::BorrowedPan ? 1 : 0;
      if (finding.kind != intake::FindingKind::LeftoverAboveOffered || finding.sds < 2.0) continue;
      text += fmt::format("{}, {}: more was left than offered, by {} g: look at the entry\n",
                          quantity::isoDate(bowl.day), bowl.items[finding.item].food,
                          shortNumber(finding.amount));
    }
  if (borrowed > 0)
    text += fmt::format("{} corrected by pans of other days\n",
                        exchange::counted(borrowed, "leftover is", "leftovers are"));
  for (const std::string& food : intake.unknownFoods)
    text += food + ": the collection has no such food; nothing is counted of it\n";
  return text;
}

std::string asText(const IntakeToWrite& intake) {
  std::string text =
      fmt::format("{}, {} to {}{}\n{} with a bowl, on {} all of it is known; {} stood by\n\n",
                  intake.groupName, quantity::isoDate(intake.from), quantity::isoDate(intake.to),
                  intake.invented ? ", invented" : "", exchange::counted(intake.report.days, "day", "days"),
                  intake.report.daysKnown, exchange::counted(intake.pans, "control pan", "control pans"));
  text += foodsText(intake);
  for (const intake::BowlChoice& bowl : intake.choices) text += choiceText(bowl);
  text += nutrientsText(intake) + targetsText(intake) + findingsText(intake);
  return text;
}

int showIntake(const IntakeWords& words, const Streams& streams) {
  const IntakeToWrite intake = workOut(words, openForReading(words.collection));
  if (words.csv)
    streams.out << exchange::intakeAsCsv(intake);
  else if (words.table)
    streams.out << asText(intake) << '\n' << exchange::kCaution;
  else
    streams.out << exchange::intakeAsJson(intake);
  return kDone;
}

}  // namespace

void defineIntake(CLI::App& app, Run& chosen) {
  const auto words = std::make_shared<IntakeWords>();
  CLI::App& command = *app.add_subcommand("intake", "What a group was offered, left and ate over some days");
  addCollectionFile(command, words->collection);
  addGroup(command, words->group)->required();
  addDay(command, "--from", words->from, "The first day, YYYY-MM-DD (default: four weeks up to the last)");
  addDay(command, "--to", words->to, "The last day, YYYY-MM-DD (default: today)");
  command.add_option("--nutrient", words->nutrients,
                     "Tagnames parted by commas (default: ENERC,PROCNT,CA,P)");
  addTableOrJson(command, words->table);
  command.add_flag("--csv", words->csv, "Print a row for each day and nutrient")
      ->excludes("--table")
      ->excludes("--json");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showIntake(*words, streams); });
}

}  // namespace tarebowl::app
