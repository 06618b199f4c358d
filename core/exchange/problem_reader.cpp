// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_reader.h"
#include "core/exchange/food_reader.h"
#include "core/exchange/json_document.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/problem_checks.h"
#include "core/exchange/problem_json.h"
#include "core/exchange/problem_words.h"
#include "core/exchange/rule_reader.h"
#include "core/exchange/safety_json.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace tarebowl::exchange {

namespace {

using diet::BalanceProblem;

constexpr std::array<std::string_view, 19> kProblemKeys{
    "format",      "title",    "notes",      "invented",       "animal",    "energy_method", "foods",
    "targets",     "ratios",   "shares",     "choices",        "reference", "objective",     "confidence",
    "whole_steps", "expected", "exclusions", "house_cautions", "lifted"};
constexpr std::array<std::string_view, 4> kAnimalKeys{"name", "count", "body_mass_kg", "taxa"};

void checkFormat(const JsonReader& root) {
  const JsonReader format = root.member("format");
  if (format.text() != kProblemFormat) format.refuse(inQuotes(kProblemFormat));
}

diet::Eater readEater(const JsonReader& reader) {
  constexpr double kLargestBodyMass = 1e6;
  reader.refuseSlips(kAnimalKeys);
  diet::Eater eater;
  if (const auto name = reader.find("name")) eater.name = name->text();
  if (const auto count = reader.find("count")) eater.count = count->wholeNumber(1, 1'000'000);
  if (const auto taxa = reader.find("taxa")) eater.taxa = taxa->texts();
  if (const auto mass = reader.find("body_mass_kg")) {
    eater.bodyMass = quantity::Kilograms(
        mass->number({.most = kLargestBodyMass,
                      .leastIncluded = false,
                      .inWords = "a number above 0",
                      .tooMuchInWords = fmt::format("at most {:g} kg", kLargestBodyMass)}));
  }
  return eater;
}

diet::Diet readReference(const JsonReader& reader, const std::vector<diet::DietFood>& foods) {
  diet::Diet diet(foods.size());
  for (const auto& [id, grams] : reader.members()) {
    const auto& wanted = id;
    const auto food =
        std::find_if(foods.begin(), foods.end(), [&](const diet::DietFood& f) { return f.id == wanted; });
    if (food == foods.end()) grams.complain(fmt::format("the id of a food, found {}", inQuotes(id)));
    diet[static_cast<std::size_t>(food - foods.begin())] = quantity::Grams(grams.number(massRange()));
  }
  return diet;
}

void readHeading(const JsonReader& root, BalanceProblem& problem) {
  if (const auto title = root.find("title")) problem.title = title->text();
  if (const auto notes = root.find("notes")) problem.notes = notes->text();
  if (const auto invented = root.find("invented")) problem.invented = invented->flag();
  if (const auto animal = root.find("animal")) problem.eater = readEater(*animal);
  if (const auto method = root.find("energy_method")) {
    problem.energyMethod = method->word(food::parseEnergyMethod, kEnergyMethodWords);
  }
}

void readWishes(const JsonReader& root, BalanceProblem& problem) {
  if (const auto reference = root.find("reference"))
    problem.reference = readReference(*reference, problem.foods);
  if (const auto objective = root.find("objective")) problem.objective = readObjective(*objective);
  if (const auto confidence = root.find("confidence")) {
    problem.confidence = readConfidence(*confidence);
  }
  if (const auto whole = root.find("whole_steps")) problem.wholeSteps = whole->flag();
}

}  // namespace

BalanceProblem parseProblem(std::string_view text, const std::string& fileName,
                            const FoodSource& collection) {
  const nlohmann::json document = parseDocument(text, fileName);
  const JsonReader root(document, fileName);
  root.refuseSlips(kProblemKeys);
  checkFormat(root);
  BalanceProblem problem;
  readHeading(root, problem);
  problem.foods =
      listOf(root, "foods", [&](const JsonReader& reader) { return readFood(reader, collection); });
  if (problem.foods.empty()) root.member("foods").complain("at least one food, found none");
  problem.targets = listOf(root, "targets", readTarget);
  problem.ratios = listOf(root, "ratios", readRatio);
  problem.shares = listOf(root, "shares", readShare);
  problem.choices = listOf(root, "choices", readChoice);
  problem.exclusions = listOf(root, "exclusions", readExclusion);
  problem.cautions = listOf(root, "house_cautions", readCaution);
  problem.lifted = listOf(root, "lifted", readLifted);
  readWishes(root, problem);
  checkProblem(problem, root);
  return problem;
}

}  // namespace tarebowl::exchange
