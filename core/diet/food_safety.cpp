// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/food_safety.h"

#include <algorithm>

namespace tarebowl::diet {

namespace {

using animal::CautionSeverity;
using animal::FoodCaution;

/// Why the ban does not hold for this food; empty where it does.
std::string reasonToLift(const BalanceProblem& problem, const std::string& ban, const DietFood& food) {
  for (const LiftedBan& lifted : problem.lifted)
    if (lifted.ban == ban && (lifted.food.empty() || lifted.food == food.id) && !lifted.reason.empty())
      return lifted.reason;
  return {};
}

bool isExcluded(const animal::Exclusion& exclusion, const DietFood& food) {
  if (!exclusion.food.empty()) return exclusion.food == food.id;
  return !exclusion.group.empty() && exclusion.group == food.group;
}

void addExclusions(std::vector<FoodFinding>& findings, const BalanceProblem& problem, const DietFood& food) {
  for (const animal::Exclusion& exclusion : problem.exclusions) {
    if (!isExcluded(exclusion, food)) continue;
    findings.push_back({.ban = exclusion.id,
                        .severity = CautionSeverity::Never,
                        .reason = exclusion.reason,
                        .origin = exclusion.origin,
                        .lifted = reasonToLift(problem, exclusion.id, food)});
  }
}

void addCautions(std::vector<FoodFinding>& findings, const BalanceProblem& problem, const DietFood& food) {
  const animal::CautionedFood looked{
      .code = food.id, .name = food.name, .form = food.form, .group = food.group, .cautions = food.cautions};
  const bool animalKnown = !problem.eater.taxa.empty();
  for (const std::span<const FoodCaution> list :
       {std::span<const FoodCaution>(problem.cautions), animal::knownCautions()})
    for (const FoodCaution* caution : animal::cautionsFor(looked, problem.eater.taxa, list))
      findings.push_back({.ban = caution->id,
                          .severity = caution->severity,
                          .reason = caution->reason,
                          .advice = caution->advice,
                          .origin = caution->origin,
                          .inForce = animalKnown,
                          .lifted = reasonToLift(problem, caution->id, food)});
}

bool isBannedBut(const BalanceProblem& problem, const DietFood& food, const std::set<std::string>& released) {
  return std::ranges::any_of(findingsOn(problem, food), [&](const FoodFinding& finding) {
    return finding.forbids() && !released.contains(finding.ban);
  });
}

}  // namespace

std::vector<FoodFinding> findingsOn(const BalanceProblem& problem, const DietFood& food) {
  std::vector<FoodFinding> findings;
  addExclusions(findings, problem, food);
  addCautions(findings, problem, food);
  std::ranges::stable_sort(findings, {}, &FoodFinding::severity);
  return findings;
}

std::vector<FoodFinding> findingsOn(const BalanceProblem& problem) {
  std::vector<FoodFinding> all;
  for (std::size_t j = 0; j < problem.foods.size(); ++j)
    for (FoodFinding& finding : findingsOn(problem, problem.foods[j])) {
      finding.food = j;
      all.push_back(std::move(finding));
    }
  return all;
}

std::vector<FoodFinding> findingsOn(const BalanceProblem& problem, const Diet& diet) {
  std::vector<FoodFinding> all = findingsOn(problem);
  std::erase_if(all, [&](const FoodFinding& finding) {
    const bool isGiven = finding.food < diet.size() && diet[finding.food].value() > 0.0;
    return !isGiven && !finding.forbids();
  });
  return all;
}

bool bansAnything(const BalanceProblem& problem) {
  return !problem.eater.taxa.empty() || !problem.exclusions.empty();
}

bool isBanned(const BalanceProblem& problem, const DietFood& food) {
  return bansAnything(problem) && isBannedBut(problem, food, {});
}

BalanceProblem withoutBanned(const BalanceProblem& problem, const std::set<std::string>& released) {
  BalanceProblem safe = problem;
  for (DietFood& food : safe.foods)
    if (isBannedBut(problem, food, released)) {
      food.min = quantity::Grams(0);
      food.max = quantity::Grams(0);
    }
  return safe;
}

}  // namespace tarebowl::diet
