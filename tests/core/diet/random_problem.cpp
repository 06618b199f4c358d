// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/diet/random_problem.h"

#include "tests/core/diet/bowls.h"
#include "tests/core/diet/literal_reading.h"

#include <rapidcheck.h>

#include <algorithm>
#include <array>

namespace tarebowl::diet::testing {
namespace {

using quantity::Basis;
using quantity::Unit;

constexpr std::array<std::string_view, 3> kGroups{"leaf", "root", "insect"};

/// From low to high - 1, the whole range from the first trial on.
int number(int low, int high) {
  return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange(low, high));
}
/// A number in tenths from low to high.
double tenths(int low, int high) {
  return number(low * 10, high * 10 + 1) / 10.0;
}
bool oneIn(int n) {
  return number(0, n) == 0;
}

void drawValue(DietFood& food, std::string_view tagname, int high, bool scatters) {
  if (oneIn(8)) return;  // nobody measured it
  food::NutrientValue value;
  value.amount = quantity::AsFedContent(tenths(0, high));
  if (scatters && oneIn(2)) value.sd = quantity::AsFedContent(value.amount.value() * tenths(0, 1));
  food.composition.set(nutrient(tagname), value);
}

DietFood drawFood(std::size_t number) {
  DietFood food;
  food.id = food.name = "food " + std::to_string(number);
  food.group = *rc::gen::elementOf(kGroups);
  drawValue(food, "WATER", 60, false);
  drawValue(food, "PROCNT", 15, true);
  drawValue(food, "FAT", 10, false);
  drawValue(food, "ASH", 5, false);
  drawValue(food, "FIBC", 8, false);
  drawValue(food, "ENERC", 400, true);
  drawValue(food, "CA", 900, true);
  drawValue(food, "P", 500, true);
  drawValue(food, "FE", 20, true);
  food.eatenFraction = tenths(0, 1);
  food.scaleStep = quantity::Grams(1);
  return food;
}

template <class Rule>
void drawBounds(Rule& rule, double scale) {
  const double low = tenths(0, 10) * scale;
  const bool both = oneIn(2);
  if (both || oneIn(2)) rule.min = low;
  if (both || !rule.min) rule.max = low + tenths(0, 10) * scale;
  rule.hard = oneIn(4);
  rule.weight = tenths(0, 3);
}

animal::Target drawTarget() {
  const std::string_view tagname =
      *rc::gen::element<std::string_view>("CA", "P", "FE", "PROCNT", "ENERC", "WATER");
  const Unit unit = tagname == "ENERC" ? *rc::gen::element(Unit::Kilocalorie, Unit::Kilojoule)
                                       : *rc::gen::element(Unit::Gram, Unit::Milligram, Unit::Microgram);
  const Basis basis = *rc::gen::element(Basis::AsFed, Basis::DryMatter, Basis::Energy, Basis::Day,
                                        Basis::BodyMass, Basis::MetabolicMass);
  animal::Target rule = target(tagname, {}, unit, basis);
  drawBounds(rule, unit == Unit::Gram ? 0.5 : 50);
  return rule;
}

ShareRule drawShare() {
  ShareRule rule = share(std::string(*rc::gen::elementOf(kGroups)), {},
                         *rc::gen::element(Basis::AsFed, Basis::DryMatter, Basis::Energy));
  drawBounds(rule, 0.05);
  return rule;
}

animal::RatioTarget drawRatio() {
  const std::string_view to = *rc::gen::element<std::string_view>("P", "FE", "ENERC");
  animal::RatioTarget rule = ratio("CA", to, {});
  drawBounds(rule, 0.5);
  return rule;
}

/// Ids that tell every rule from every other.
void nameRules(BalanceProblem& problem) {
  int number = 0;
  const auto name = [&](auto& rules) {
    for (auto& rule : rules) rule.id += " " + std::to_string(++number);
  };
  name(problem.targets);
  name(problem.ratios);
  name(problem.shares);
}

/// Bounds around a value: missed by some bowls and met by others.
template <class Rules>
void moveBounds(Rules& rules, const std::vector<TargetBalance>& lines, std::size_t& line) {
  Rules kept;
  for (auto& rule : rules) {
    const std::optional<double> value = lines[line++].value;
    if (!value || !(*value > 0)) continue;
    const double low = *value * tenths(5, 12) / 10;
    const double width = *value * tenths(1, 10) / 10;
    if (rule.max) rule.max = low + width;
    if (rule.min) rule.min = low;
    kept.push_back(rule);
  }
  rules = kept;
}

}  // namespace

BalanceProblem drawProblem() {
  BalanceProblem problem;
  problem.energyMethod = *rc::gen::element(food::EnergyMethod::Given, food::EnergyMethod::ModifiedAtwater);
  problem.eater.bodyMass = quantity::Kilograms(tenths(1, 5));
  const int foods = number(1, 7);
  for (int j = 0; j < foods; ++j) problem.foods.push_back(drawFood(problem.foods.size()));
  for (int i = number(0, 6); i > 0; --i) problem.targets.push_back(drawTarget());
  for (int i = number(0, 3); i > 0; --i) problem.ratios.push_back(drawRatio());
  for (int i = number(0, 3); i > 0; --i) problem.shares.push_back(drawShare());
  nameRules(problem);
  if (oneIn(2)) problem.reference = drawDiet(problem);
  if (oneIn(3)) problem.confidence = 0.9;
  return problem;
}

BalanceProblem drawSensibleProblem() {
  BalanceProblem problem = drawProblem();
  const std::vector<TargetBalance> lines = literalBalance(problem, drawDiet(problem)).targets;
  std::size_t line = 0;
  moveBounds(problem.targets, lines, line);
  moveBounds(problem.ratios, lines, line);
  moveBounds(problem.shares, lines, line);
  for (ShareRule& share : problem.shares) {  // no group is more than the whole
    if (share.min) share.min = std::min(*share.min, 0.95);
    if (share.max) share.max = std::min(*share.max, 1.0);
  }
  return problem;
}

Diet drawDiet(const BalanceProblem& problem) {
  Diet diet;
  for (std::size_t j = 0; j < problem.foods.size(); ++j) {
    diet.emplace_back(oneIn(3) ? 0.0 : tenths(0, 200));
  }
  return diet;
}

}  // namespace tarebowl::diet::testing
