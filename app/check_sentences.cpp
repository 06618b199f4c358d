// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_sentences.h"

#include "app/wording.h"

#include <fmt/format.h>

namespace tarebowl::app {

namespace {

using food::CheckCode;

std::string doubtOf(const food::FoodFinding& it, std::span<const exchange::CheckedName> names) {
  const food::Finding& finding = it.finding;
  const std::string nutrient =
      finding.nutrients.empty() ? "" : food::describe(finding.nutrients.front()).name;
  const std::string unit =
      finding.nutrients.empty() ? "" : std::string(symbolOf(food::describe(finding.nutrients.front()).unit));
  const std::string found = shortNumber(finding.found);
  const std::string against = shortNumber(finding.against);
  switch (finding.code) {
    case CheckCode::ValueOverFood:
      return fmt::format("{} is {} {} in 100 g, more than the food: look at its unit", nutrient, found, unit);
    case CheckCode::ProximatesOverWhole:
      return fmt::format("the known proximates add up to {} g in 100 g: look for one on another basis",
                         found);
    case CheckCode::ProximatesDoNotClose:
      return fmt::format(
          "water, protein, fat, ash and carbohydrate add up to {} g and not to 100 g: measure again what is "
          "least sure",
          found);
    case CheckCode::PartsOverWhole:
      return fmt::format(
          "the parts of {} add up to {} of {} {}: ask whether both are of one sample and one method",
          nutrient, found, against, unit);
    case CheckCode::NegativeCarbohydrate:
      return fmt::format(
          "what is left for carbohydrate is {} g: in insects chitin is counted twice, elsewhere a proximate "
          "is too high",
          found);
    case CheckCode::EnergyDisagrees:
      return fmt::format(
          "its energy is stated as {} kcal, from its proximates it is {}: look at the energy's unit and "
          "method",
          found, against);
    case CheckCode::ScatterWiderThanValue:
      return fmt::format(
          "the sd of {}, {} {}, is wider than {} that such samples can have: look at the number of samples",
          nutrient, found, unit, against);
    case CheckCode::MineralsOverAsh:
      return fmt::format("its minerals weigh {} g and its ash {} g: look for a slip of a unit", found,
                         against);
    case CheckCode::GuaranteeAsMean:
      return fmt::format("{} ({} {}) is a label's guarantee and no mean: have it measured", nutrient, found,
                         unit);
    case CheckCode::UnitSlip:
      return fmt::format("{} is {} {}, about a thousand times off its group's {}: look at its unit", nutrient,
                         found, unit, against);
    case CheckCode::FarFromGroup:
      return fmt::format("{} is {} {}, far above its group's {} (robust z {}): look at the report", nutrient,
                         found, unit, against, shortNumber(it.robustZ));
    case CheckCode::RatioFarFromGroup:
      return fmt::format("Ca:P is {}, far from its group's {} (robust z {}): look at both reports", found,
                         against, shortNumber(it.robustZ));
    case CheckCode::SameName:
      return fmt::format("has the name and form of {}: join them or tell them apart",
                         names[it.other.value()].code);
    case CheckCode::SameComposition:
      return fmt::format("has the numbers of {} throughout: one may be a copy", names[it.other.value()].code);
    case CheckCode::Stale:
      return fmt::format("its newest sample is {} years old, more than {}: sample it again", found, against);
  }
  return {};
}

}  // namespace

std::string sentenceOf(const food::FoodFinding& finding, std::span<const exchange::CheckedName> names) {
  const exchange::CheckedName& name = names[finding.food];
  const std::string form = name.form.empty() ? "" : ", " + name.form;
  return fmt::format("{}{} ({}): {}", name.name, form, name.code, doubtOf(finding, names));
}

}  // namespace tarebowl::app
