// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/study_page.h"
#include "core/exchange/wording.h"
#include "core/intake/study_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace tarebowl::exchange {

namespace {

constexpr double kPlannedPrecision = 0.1;  // of the mean: how many days a next study would need for it

template <class Number>
Cell orBlank(const std::optional<Number>& number) {
  return number ? Cell(static_cast<double>(*number)) : Cell(std::string());
}

Cell count(std::size_t number) {
  return static_cast<double>(number);
}

std::string foodName(const IntakeToWrite& intake, const std::string& code) {
  const auto found = std::ranges::find(intake.problem.foods, code, &diet::DietFood::id);
  return found == intake.problem.foods.end() || found->name.empty() ? code : found->name;
}

void addInterval(std::vector<Cell>& row, const std::optional<intake::MeanOfDays>& mean) {
  const bool known = mean && mean->interval;
  row.push_back(mean ? Cell(mean->mean) : Cell(std::string()));
  row.push_back(known ? Cell(mean->interval->low) : Cell(std::string()));
  row.push_back(known ? Cell(mean->interval->high) : Cell(std::string()));
}

StudyTable foodTable(const IntakeToWrite& intake) {
  StudyTable table{"Foods, grams as fed of all animals, over bowls whose leftover is known",
                   {"Food", "Offered g", "Left g", "Left as offered g", "Lost g", "Eaten g", "Eaten %",
                    "Eaten g a day", "95 % from", "to", "Bowls", "Not known", "Estimated"},
                   {}};
  for (const intake::FoodReport& food : intake.report.foods) {
    std::vector<Cell>& row = table.rows.emplace_back();
    row = {foodName(intake, food.food),
           food.offered,
           food.left,
           food.leftAsOffered,
           food.lost,
           food.eaten,
           food.offered > 0.0 ? Cell(100.0 * food.eaten / food.offered) : Cell(std::string())};
    addInterval(row, food.eatenPerDay);
    for (const std::size_t number : {food.bowls, food.bowlsNotKnown, food.bowlsEstimated})
      row.push_back(count(number));
  }
  return table;
}

double coverageOf(const intake::NutrientReport& nutrient) {
  double coverage = 1.0;
  for (const intake::DayIntake& day : nutrient.days) coverage = std::min(coverage, day.coverage);
  return coverage;
}

std::optional<int> daysForPrecision(const intake::NutrientReport& nutrient) {
  std::vector<intake::DayValue> days;
  for (const intake::DayIntake& day : nutrient.days) {
    const intake::DayIntake one = intake::perAnimal(day);
    days.push_back({day.day, one.eaten ? std::optional(one.eaten->value()) : std::nullopt});
  }
  const auto variation = intake::variationOf(intake::onCalendar(days));
  if (!variation || !(variation->mean > 0.0)) return std::nullopt;
  return intake::daysNeeded(variation->sdForPlanning(), {.halfWidth = kPlannedPrecision * variation->mean});
}

StudyTable nutrientTable(const IntakeToWrite& intake) {
  StudyTable table{"Nutrients as eaten, per animal and day",
                   {"Nutrient", "Unit", "Mean", "95 % from", "to", "From day to day (sd)",
                    "From composition (sd)", "Days", "Known of %", "Days needed for ± 10 %"},
                   {}};
  for (const intake::NutrientReport& nutrient : intake.report.nutrients) {
    const auto& known = food::describe(nutrient.nutrient);
    std::vector<Cell>& row = table.rows.emplace_back();
    row = {std::string(known.name), std::string(quantity::symbolOf(known.unit))};
    addInterval(row, nutrient.perAnimal);
    row.push_back(nutrient.perAnimal ? orBlank(nutrient.perAnimal->dayToDaySd) : Cell(std::string()));
    row.push_back(nutrient.perAnimal ? Cell(nutrient.perAnimal->commonSd) : Cell(std::string()));
    row.push_back(count(nutrient.perAnimal ? nutrient.perAnimal->days : 0));
    row.emplace_back(100.0 * coverageOf(nutrient));
    row.push_back(orBlank(daysForPrecision(nutrient)));
  }
  return table;
}

StudyTable targetTable(const IntakeToWrite& intake) {
  StudyTable table{"The mean day against the targets, per animal",
                   {"Target", "Least", "Most", "Offered", "As offered", "Eaten", "As eaten", "Known of %"},
                   {}};
  if (!intake.report.asEaten) return table;
  for (std::size_t i = 0; i < intake.report.asEaten->targets.size(); ++i) {
    const diet::TargetBalance& eaten = intake.report.asEaten->targets[i];
    const diet::TargetBalance& offered = intake.report.asOffered->targets[i];
    table.rows.push_back({eaten.id, orBlank(eaten.min), orBlank(eaten.max), orBlank(offered.value),
                          std::string(stateText(offered.state)), orBlank(eaten.value),
                          std::string(stateText(eaten.state)), 100.0 * eaten.coverage});
  }
  return table;
}

StudyTable dayTable(const IntakeToWrite& intake) {
  StudyTable table{"Day by day, of all animals together", {"Day", "Animals"}, {}};
  std::map<quantity::Date, std::vector<Cell>> rows;
  for (const intake::NutrientReport& nutrient : intake.report.nutrients) {
    const auto& known = food::describe(nutrient.nutrient);
    const std::string unit(quantity::symbolOf(known.unit));
    for (const char* what : {"offered", "eaten", "sd"})
      table.columns.push_back(fmt::format("{}, {} {}", known.name, unit, what));
    for (const intake::DayIntake& day : nutrient.days) {
      std::vector<Cell>& row = rows[day.day];
      if (row.empty()) row = {quantity::isoDate(day.day), static_cast<double>(day.animals)};
      row.emplace_back(day.offered);
      row.push_back(day.eaten ? Cell(day.eaten->value()) : Cell(std::string()));
      row.push_back(day.eaten ? Cell(day.eaten->sd()) : Cell(std::string()));
    }
  }
  for (auto& [day, row] : rows) table.rows.push_back(std::move(row));
  return table;
}

StudyTable digestionTable(const IntakeToWrite& intake) {
  StudyTable table{
      "Apparent digestibility, on dry matter: eaten less what was in the faeces, over eaten; of all animals",
      {"Collected", "Of", "Unit", "Eaten", "In faeces", "Digested %", "± (sd)", "Known of %", ""},
      {}};
  for (const intake::DigestionTrial& trial : intake.digestion)
    for (const intake::DigestedLine& line : trial.lines) {
      std::vector<Cell>& row = table.rows.emplace_back();
      const bool ofDryMatter = !line.nutrient;
      row = {quantity::isoDate(trial.collected.from) + " to " + quantity::isoDate(trial.collected.until),
             ofDryMatter ? std::string("Dry matter") : std::string(food::describe(*line.nutrient).name),
             ofDryMatter ? std::string("g")
                         : std::string(quantity::symbolOf(food::describe(*line.nutrient).unit)),
             line.eaten.value, line.inFaeces.value};
      row.push_back(line.apparent ? Cell(100.0 * line.apparent->share) : Cell(std::string()));
      row.push_back(line.apparent ? Cell(100.0 * line.apparent->sd) : Cell(std::string()));
      row.emplace_back(100.0 * line.coverage);
      row.emplace_back(digestionNote(trial, line));
    }
  return table;
}

StudyTable choiceTable(const IntakeToWrite& intake) {
  StudyTable table{
      "What is picked first (Manly's alpha; the neutral value is 1 over the foods compared)",
      {"Bowl", "Food", "Alpha", "95 % from", "to", "Neutral", "Ivlev's E", "Bowls", "Eaten up in"},
      {}};
  for (const intake::BowlChoice& bowl : intake.choices)
    for (const intake::FoodChoice& food : bowl.choice.foods)
      table.rows.push_back({bowl.label, foodName(intake, food.food),
                            food.alpha ? Cell(*food.alpha) : Cell(std::string(symbolOf(food.state))),
                            food.interval ? Cell(food.interval->low) : Cell(std::string()),
                            food.interval ? Cell(food.interval->high) : Cell(std::string()),
                            bowl.choice.neutral > 0.0 ? Cell(bowl.choice.neutral) : Cell(std::string()),
                            orBlank(food.ivlev), count(food.bowls), count(food.bowlsAllEaten)});
  return table;
}

StudyTable findingTable(const IntakeToWrite& intake) {
  StudyTable table{"To be looked into", {"What", "Times"}, {}};
  std::map<std::string, std::size_t> times;
  for (const intake::EatenBowl& bowl : intake.bowls)
    for (const intake::Finding& finding : bowl.findings) ++times[std::string(symbolOf(finding.kind))];
  for (const auto& [what, number] : times) table.rows.push_back({what, count(number)});
  for (const std::string& food : intake.unknownFoods)
    table.rows.push_back({food + ": the collection has no such food", std::string()});
  return table;
}

}  // namespace

std::vector<std::string> studyHead(const IntakeToWrite& intake) {
  return {fmt::format("Intake study: {}, {} to {}", intake.groupName, quantity::isoDate(intake.from),
                      quantity::isoDate(intake.to)),
          fmt::format("{} with a bowl, on {} all of it is known; what is missing stays missing. {}.",
                      counted(intake.report.days, "day", "days"), intake.report.daysKnown,
                      counted(intake.pans, "control pan", "control pans"))};
}

std::vector<StudyTable> studyTables(const IntakeToWrite& intake) {
  std::vector<StudyTable> tables{foodTable(intake),      nutrientTable(intake), targetTable(intake),
                                 digestionTable(intake), choiceTable(intake),   findingTable(intake),
                                 dayTable(intake)};
  std::erase_if(tables, [](const StudyTable& table) { return table.rows.empty(); });
  return tables;
}

}  // namespace tarebowl::exchange
