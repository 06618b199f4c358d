// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reference/ifct_foods.h"

#include "core/diet/measure.h"
#include "core/food/energy.h"
#include "tests/reference/draw.h"
#include "tests/reference/reference_data.h"

#include <array>
#include <utility>

namespace tarebowl::reference {

namespace {

using quantity::Basis;
using quantity::Grams;
using quantity::Unit;

/// The table's columns, all in g per 100 g as fed.
constexpr std::array<std::pair<const char*, const char*>, 22> kColumns{{
    {"WATER", "Moisture; water"},
    {"PROCNT", "Protein; protcnt"},
    {"FAT", "Total Fat; fatce"},
    {"ASH", "Ash; ash"},
    {"FIBTG", "Dietary Fiber; fibtg"},
    {"CA", "Calcium (Ca); ca"},
    {"P", "Phosphorus (P); p"},
    {"MG", "Magnesium (Mg); mg"},
    {"K", "Potassium (K); k"},
    {"NA", "Sodium (Na); na"},
    {"FE", "Iron (Fe); fe"},
    {"ZN", "Zinc (Zn); zn"},
    {"CU", "Copper (Cu); cu"},
    {"MN", "Manganese (Mn); mn"},
    {"SE", "Selenium (Se); se"},
    {"VITC", "Ascorbic acids (C); vitc"},
    {"THIA", "Thiamine (B1); thia"},
    {"RIBF", "Riboflavin (B2); ribf"},
    {"NIA", "Niacin (B3); nia"},
    {"FOL", "Folates (B9); folsum"},
    {"VITK", "Phylloquinones (K1); vitk1"},
    {"CARTB", "β-Carotene; cartb"},
}};

food::Composition compositionOf(const CsvRow& row) {
  food::Composition composition;
  for (const auto& [tag, column] : kColumns) {
    const food::NutrientId nutrient = food::findByTagname(tag).value();
    const double factor = quantity::conversionFactor(Unit::Gram, food::describe(nutrient).unit).value();
    const double grams = row.number(column).value_or(0.0);
    if (grams > 0.0) {
      food::NutrientValue value;
      value.amount = quantity::AsFedContent(grams * factor);
      composition.set(nutrient, value);
    }
  }
  return composition;
}

bool closes(const food::Composition& composition) {
  const auto nfe = food::nitrogenFreeExtract(composition);
  const auto water = composition.amountPer100g(food::nutrients::water());
  return nfe && *nfe >= 0.0 && water && *water < 100.0;
}

void pickFoods(diet::BalanceProblem& problem, const std::vector<diet::DietFood>& table, std::size_t count,
               Draw& draw) {
  for (const std::size_t at : draw.some(count, table.size())) {
    diet::DietFood food = table[at];
    food.scaleStep = Grams(draw.chance(0.3) ? 5.0 : 1.0);
    food.max = Grams(food.scaleStep.value() * static_cast<double>(10 + draw.below(40)));
    if (draw.chance(0.2)) food.eatenFraction = 0.9;
    problem.foods.push_back(std::move(food));
  }
}

/// One target whose band holds for the hidden diet, unless it is moved away from it.
void addTarget(diet::BalanceProblem& problem, const Eigen::VectorXd& hidden, Draw& draw) {
  constexpr std::array kBases{Basis::AsFed, Basis::DryMatter, Basis::Energy,
                              Basis::Day,   Basis::BodyMass,  Basis::MetabolicMass};
  const bool first = problem.targets.empty();
  const food::NutrientId nutrient =
      first ? food::nutrients::energy()
            : food::findByTagname(kColumns[1 + draw.below(kColumns.size() - 1)].first).value();
  animal::Target target{.id = std::string("t").append(std::to_string(problem.targets.size())),
                        .nutrient = nutrient,
                        .min = 1.0,
                        .max = std::nullopt,
                        .unit = food::describe(nutrient).unit,
                        .basis = first ? Basis::Day : kBases[draw.below(kBases.size())],
                        .hard = false,
                        .weight = draw.chance(0.3) ? draw.between(0.2, 5.0) : 1.0,
                        .origin = {}};
  diet::BalanceProblem probe = problem;
  probe.targets = {target};
  const diet::Measure measure = diet::measuresOf(probe).front();
  const double part = measure.part.at(hidden);
  if (!(part > 0.0)) return;
  const double value = part / measure.whole.at(hidden) * (draw.chance(0.25) ? draw.between(0.5, 2.0) : 1.0);
  const double width = draw.between(0.01, 0.3);
  const std::size_t sides = draw.below(4);
  target.min = sides == 1 ? std::nullopt : std::optional(value * (1.0 - width));
  target.max = sides == 2 ? std::nullopt : std::optional(value * (1.0 + width));
  problem.targets.push_back(target);
}

}  // namespace

std::vector<diet::DietFood> readIfctFoods(const std::filesystem::path& table) {
  std::vector<diet::DietFood> foods;
  forEachRow(table, [&](const CsvRow& row) {
    diet::DietFood food;
    food.id = row.at("Food Code; code");
    food.name = row.at("Food Name; name");
    food.group = row.at("Food Group; grup");
    food.composition = compositionOf(row);
    if (closes(food.composition)) foods.push_back(std::move(food));
  });
  return foods;
}

diet::BalanceProblem randomBalance(const std::vector<diet::DietFood>& table, const RandomBalance& wanted) {
  Draw draw(wanted.seed);
  diet::BalanceProblem problem;
  problem.wholeSteps = wanted.wholeSteps;
  problem.eater.bodyMass = quantity::Kilograms(draw.between(0.1, 5.0));
  pickFoods(problem, table, wanted.foods, draw);
  Eigen::VectorXd hidden(static_cast<Eigen::Index>(wanted.foods));
  for (std::size_t j = 0; j < wanted.foods; ++j)
    hidden[static_cast<Eigen::Index>(j)] = draw.between(0.0, problem.foods[j].max->value());
  while (problem.targets.size() < wanted.targets) addTarget(problem, hidden, draw);
  const auto amount = [&](food::NutrientId nutrient) {
    double total = 0.0;
    for (std::size_t j = 0; j < wanted.foods; ++j)
      total += hidden[static_cast<Eigen::Index>(j)] * problem.foods[j].eatenFraction *
               problem.foods[j].composition.amountPer100g(nutrient).value_or(0.0);
    return total;
  };
  const double ratio = amount(food::nutrients::calcium()) / amount(food::nutrients::phosphorus());
  problem.ratios.push_back({.id = "ca-p",
                            .of = food::nutrients::calcium(),
                            .to = food::nutrients::phosphorus(),
                            .min = 0.95 * ratio,
                            .max = 1.1 * ratio,
                            .hard = false,
                            .weight = 1.0,
                            .origin = {}});
  return problem;
}

}  // namespace tarebowl::reference
