// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/check_sentences.h"

#include "core/exchange/wording.h"
#include "core/food/check_words.h"

#include <fmt/format.h>

#include <span>
#include <string_view>

namespace tarebowl::app {

namespace {

using exchange::shortNumber;

std::string factOf(std::string_view fact, const food::FoodFinding& it,
                   std::span<const exchange::CheckedName> names) {
  const food::Finding& finding = it.finding;
  if (fact == "number") return shortNumber(finding.found);
  if (fact == "limit") return shortNumber(finding.against);
  if (fact == "other") return names[it.other.value()].code;
  if (fact == "parts") {
    std::string parts;  // of what the first of the nutrients is the whole
    for (const food::NutrientId part : std::span(finding.nutrients).subspan(1))
      parts += (parts.empty() ? "" : " + ") + food::describe(part).name;
    return parts;
  }
  const food::Nutrient& nutrient = food::describe(finding.nutrients.at(0));
  if (fact == "Nutrient" || fact == "nutrient") return nutrient.name;
  return fmt::format("{} {}", shortNumber(fact == "found" ? finding.found : finding.against),
                     symbolOf(nutrient.unit));
}

}  // namespace

std::string sentenceOf(const food::FoodFinding& finding, std::span<const exchange::CheckedName> names) {
  const exchange::CheckedName& name = names[finding.food];
  const std::string form = name.form.empty() ? "" : ", " + name.form;
  const food::CheckWords words = food::wordsOf(finding.finding.code);
  const auto fact = [&](std::string_view named) { return factOf(named, finding, names); };
  const std::string z =
      finding.robustZ == 0.0 ? "" : fmt::format(" Robust z {}.", shortNumber(finding.robustZ));
  return fmt::format("{}{} ({}): {}{} {}", name.name, form, name.code, food::withFacts(words.what, fact), z,
                     food::withFacts(words.advice, fact));
}

}  // namespace tarebowl::app
