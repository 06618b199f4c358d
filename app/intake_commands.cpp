// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/intake_commands.h"

#include "app/command_line.h"
#include "app/nutrient_list.h"
#include "app/open_collection.h"
#include "app/options.h"
#include "app/text_table.h"
#include "app/written_file.h"
#include "core/exchange/study_page.h"
#include "core/exchange/wording.h"
#include "core/store/reading.h"
#include "core/transfer/intake_study.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
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
  bool csv = false;    ///< for a spreadsheet
  std::string file{};  ///< that is written; empty: none
};

IntakeToWrite workOut(const IntakeWords& words, const store::Collection& collection) {
  const quantity::Date to = dayOf(words.to);
  const quantity::Date from =
      words.from.value_or(std::chrono::sys_days(to) - std::chrono::days(kDaysWithoutFrom - 1));
  if (from > to) throw UsageError("--from: expected a day that is not after " + quantity::isoDate(to));
  const std::string group = groupOf(collection, words.group, to).group.record.code;
  return store::readTogether(collection, [&](const store::Collection& whole) {
    return transfer::intakeStudy(whole, group, from, to, nutrientsNamed(words.nutrients)).value();
  });
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

std::string digestionText(const IntakeToWrite& intake) {
  if (intake.digestion.empty()) return {};
  TextTable table({{"apparently digested"},
                   {"eaten", Align::Right},
                   {"in faeces", Align::Right},
                   {"unit"},
                   {"share", Align::Right},
                   {"collected"},
                   {""}});
  for (const intake::DigestionTrial& trial : intake.digestion)
    for (const intake::DigestedLine& line : trial.lines)
      table.addRow(
          {line.nutrient ? std::string(food::describe(*line.nutrient).name) : "dry matter",
           shortNumber(line.eaten.value), shortNumber(line.inFaeces.value),
           line.nutrient ? std::string(quantity::symbolOf(food::describe(*line.nutrient).unit)) : "g",
           line.apparent ? exchange::percentText(line.apparent->share) : "?",
           quantity::isoDate(trial.collected.from) + " to " + quantity::isoDate(trial.collected.until),
           exchange::digestionNote(trial, line)});
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
  text += nutrientsText(intake) + targetsText(intake) + digestionText(intake) + findingsText(intake);
  return text;
}

void writeStudy(const IntakeToWrite& intake, const std::string& name) {
  const std::filesystem::path file(name);
  if (file.extension() == ".xlsx")
    exchange::writeStudyXlsx(intake, file);
  else if (file.extension() == ".html")
    writeWhole(name, exchange::studyAsHtml(intake));
  else
    throw UsageError(name + ": expected NAME.html or NAME.xlsx (the window writes PDF)");
}

int showIntake(const IntakeWords& words, const Streams& streams) {
  const IntakeToWrite intake = workOut(words, openForReading(words.collection));
  if (!words.file.empty()) {
    writeStudy(intake, words.file);
    streams.out << fmt::format("The intake of {} is written to {}\n", intake.groupName, words.file);
    return kDone;
  }
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
  command.add_option("FILE", words->file, "Write it as the report of a study: NAME.html or NAME.xlsx")
      ->excludes("--table")
      ->excludes("--json")
      ->excludes("--csv");
  runWhenNamed(command, chosen, [words](const Streams& streams) { return showIntake(*words, streams); });
}

}  // namespace tarebowl::app
