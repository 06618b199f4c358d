// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/intake_commands.h"

#include "app/open_collection.h"
#include "app/text_table.h"
#include "core/exchange/intake_report.h"
#include "core/exchange/wording.h"
#include "core/transfer/intake_study.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace tarebowl::app {

namespace {

using Align = TextTable::Align;
using exchange::IntakeToWrite;
using exchange::shortNumber;

constexpr int kDaysWithoutFrom = 28;

/// Tagnames parted by commas; energy, protein, calcium and phosphorus where none is named.
std::vector<food::NutrientId> nutrientsOf(const std::string& text) {
  if (text.empty()) return transfer::nutrientsOfReport();
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

IntakeToWrite workOut(const Command& command, const store::Collection& collection) {
  const quantity::Date to = dayOf(command);
  const quantity::Date from =
      command.from.value_or(std::chrono::sys_days(to) - std::chrono::days(kDaysWithoutFrom - 1));
  if (from > to) throw UsageError("--from: expected a day that is not after " + quantity::isoDate(to));
  const std::string group = groupOf(command, collection).group.record.code;
  return transfer::intakeStudy(collection, group, from, to, nutrientsOf(command.nutrients)).value();
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

}  // namespace

int showIntake(const Command& command, const Streams& streams) {
  const store::Collection collection = openForReading(command.file.value());
  const IntakeToWrite intake = workOut(command, collection);
  if (command.csv)
    streams.out << exchange::intakeAsCsv(intake);
  else if (command.table)
    streams.out << asText(intake) << '\n' << exchange::kCaution;
  else
    streams.out << exchange::intakeAsJson(intake);
  return kDone;
}

}  // namespace tarebowl::app
