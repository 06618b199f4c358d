// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/diet_sheet.h"

#include "core/animal/animal_words.h"
#include "core/diet/balance.h"
#include "core/diet/food_safety.h"
#include "core/diet/supply.h"
#include "core/exchange/line_words.h"
#include "core/exchange/wording.h"

#include <algorithm>

namespace tarebowl::exchange {

namespace {

using diet::ProblemOfVersion;
using quantity::Grams;

constexpr double kGramsPerKilogram = 1000.0;

/// The name without the purpose or the meal, which stand in columns of their own.
SheetFood foodOf(const ProblemOfVersion& made, std::size_t i, const PageTongue& tongue) {
  const diet::DietFood& food = made.problem.foods[i];
  const diet::PlaceInVersion& place = made.places.at(i);
  SheetFood row{.name = nameOf(food),
                .meal = place.meal,
                .perAnimal = made.amounts.at(i),
                .step = food.scaleStep,
                .preparation = food.preparation,
                .eatenFraction = food.eatenFraction};
  if (place.purpose != diet::Purpose::Bowl) row.purpose = tongue.say(symbolOf(place.purpose));
  if (place.allowance) {
    row.low = place.allowance->low;
    row.high = place.allowance->high;
  }
  if (food.costPerKg) row.costPerDay = *food.costPerKg * row.perAnimal.value() / kGramsPerKilogram;
  return row;
}

/// Meals in the order in which the version first names them.
void addFoods(const ProblemOfVersion& made, DietSheet& sheet, const PageTongue& tongue) {
  std::vector<std::string> meals;
  const auto rank = [&](const SheetFood& food) {
    return std::ranges::find(meals, food.meal) - meals.begin();
  };
  for (std::size_t i = 0; i < made.amounts.size(); ++i) {
    if (made.amounts[i] <= Grams(0) && !made.places.at(i).allowance) continue;
    sheet.foods.push_back(foodOf(made, i, tongue));
    if (rank(sheet.foods.back()) == static_cast<std::ptrdiff_t>(meals.size()))
      meals.push_back(sheet.foods.back().meal);
  }
  std::ranges::stable_sort(sheet.foods, {}, rank);
  for (const SheetFood& food : sheet.foods) {
    sheet.total += food.perAnimal;
    if (food.costPerDay)
      sheet.costPerDay = sheet.costPerDay.value_or(0.0) + *food.costPerDay;
    else
      ++sheet.unpriced;
  }
}

void addEnergy(const ProblemOfVersion& made, DietSheet& sheet) {
  const diet::Supply supply = diet::nutrientSupply(made.problem, food::nutrients::energy());
  for (std::size_t i = 0; i < made.amounts.size(); ++i) {
    if (made.amounts[i] <= Grams(0)) continue;
    const auto at = static_cast<Eigen::Index>(i);
    if (supply.known[at])
      sheet.energy = sheet.energy.value_or(0.0) + supply.perGram[at] * made.amounts[i].value();
    else
      sheet.energyAtLeast = true;
  }
  sheet.energyMethod = food::symbolOf(made.problem.energyMethod);
}

std::string sourceText(const animal::TargetOrigin& origin, const PageTongue& tongue) {
  std::string text = origin.source;
  if (const auto word = animal::symbolOf(origin.provenance); !word.empty())
    text += (text.empty() ? "" : ", ") + tongue.say(word);
  if (!origin.modelSpecies.empty())
    text += (text.empty() ? "" : "; ") + tongue.say("for {}", origin.modelSpecies);
  return text;
}

std::size_t sourceNumber(const std::string& text, std::vector<std::string>& sources) {
  if (text.empty()) return 0;
  auto known = std::ranges::find(sources, text);
  if (known == sources.end()) known = sources.insert(sources.end(), text);
  return static_cast<std::size_t>(known - sources.begin()) + 1;
}

std::optional<double> times(std::optional<double> number, double scale) {
  return number ? std::optional(*number * scale) : std::nullopt;
}

void addTargets(const ProblemOfVersion& made, DietSheet& sheet, const PageTongue& tongue) {
  for (const diet::TargetBalance& line : diet::balance(made.problem, made.amounts).targets) {
    const LineWords words = wordsOf(made.problem, line, tongue);
    sheet.targets.push_back(
        {.id = line.id,
         .subject = words.subject,
         .unit = words.unit,
         .value = line.state == diet::TargetState::Unknown ? std::nullopt : times(line.value, words.scale),
         .valueText = tongue.number(valueText(line, words.scale)),
         .min = times(line.min, words.scale),
         .max = times(line.max, words.scale),
         .state = tongue.say(stateText(line.state)),
         .coverage = line.coverage,
         .hard = isHard(made.problem, line),
         .source = sourceNumber(sourceText(originOf(made.problem, line), tongue), sheet.sources)});
  }
}

void addCautions(const ProblemOfVersion& made, DietSheet& sheet, const PageTongue& tongue) {
  for (const diet::FoodFinding& finding : diet::findingsOn(made.problem, made.amounts))
    sheet.cautions.push_back({nameOf(made.problem.foods[finding.food]),
                              tongue.say(animal::symbolOf(finding.severity)), tongue.say(finding.reason),
                              tongue.say(finding.advice), finding.lifted});
}

}  // namespace

DietSheet sheetOf(const SheetSubject& subject, const diet::DietVersion& version, const ProblemOfVersion& made,
                  const PageTongue& tongue) {
  DietSheet sheet{.title = made.problem.title,
                  .species = subject.species,
                  .section = subject.section,
                  .bodyMass = made.problem.eater.bodyMass,
                  .version = version,
                  .animals = made.problem.eater.count,
                  .invented = made.problem.invented || subject.diet.invented};
  addFoods(made, sheet, tongue);
  addEnergy(made, sheet);
  addTargets(made, sheet, tongue);
  sheet.notJudged = made.notCounted;
  addCautions(made, sheet, tongue);
  return sheet;
}

}  // namespace tarebowl::exchange
