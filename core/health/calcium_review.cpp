// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/health/calcium_review.h"

#include "core/diet/supply.h"
#include "core/health/calcium_days.h"

#include <algorithm>
#include <chrono>

namespace tarebowl::health {

namespace {

bool isAbout(food::NutrientId nutrient) {
  const auto about = calciumNutrients();
  return std::ranges::find(about, nutrient) != about.end();
}

/// The problem with its calcium rules alone.
diet::BalanceProblem calciumProblem(diet::BalanceProblem problem) {
  std::erase_if(problem.targets, [](const animal::Target& target) { return !isAbout(target.nutrient); });
  std::erase_if(problem.ratios,
                [](const animal::RatioTarget& ratio) { return !isAbout(ratio.of) || !isAbout(ratio.to); });
  problem.shares.clear();
  problem.choices.clear();
  problem.confidence.reset();
  return problem;
}

std::vector<CalciumZone> zonesOf(const diet::BalanceProblem& problem, const diet::Diet& offered,
                                 const diet::Diet& eaten) {
  std::vector<CalciumZone> zones;
  for (const animal::Target& target : problem.targets)
    zones.push_back({target.id, target.nutrient, {}, target.unit, target.basis, target.origin, {}, {}});
  for (const animal::RatioTarget& ratio : problem.ratios)
    zones.push_back({ratio.id, ratio.of, ratio.to, {}, {}, ratio.origin, {}, {}});
  const auto judge = [&](const diet::Diet& diet, diet::TargetBalance CalciumZone::*side) {
    if (diet.empty()) return;
    const diet::Balance balance = diet::balance(problem, diet);
    for (std::size_t i = 0; i < zones.size(); ++i) zones[i].*side = balance.targets[i];
  };
  judge(offered, &CalciumZone::offered);
  judge(eaten, &CalciumZone::eaten);
  return zones;
}

std::vector<FoodGrams> gramsEaten(const diet::BalanceProblem& problem, const diet::Diet& eaten) {
  std::vector<FoodGrams> grams;
  for (std::size_t i = 0; i < eaten.size(); ++i) grams.push_back({problem.foods[i].id, eaten[i].value()});
  return grams;
}

/// Ca:P of a diet; nothing where it brings no phosphorus that is known.
std::optional<double> ratioIn(const diet::BalanceProblem& problem, const diet::Diet& diet) {
  const auto total = [&](food::NutrientId nutrient) {
    return diet::nutrientSupply(problem, nutrient).perGram.dot(diet::gramsOf(problem, diet));
  };
  const double phosphorus = total(food::nutrients::phosphorus());
  if (!(phosphorus > 0.0)) return std::nullopt;
  return total(food::nutrients::calcium()) / phosphorus;
}

std::optional<SupplementAdvice> adviceOn(const CalciumQuestion& question, const diet::BalanceProblem& problem,
                                         const diet::Diet& eaten) {
  const auto food = std::ranges::find(problem.foods, question.supplement, &diet::DietFood::id);
  if (food == problem.foods.end() || eaten.empty()) return std::nullopt;
  const SupplementUse use{static_cast<std::size_t>(food - problem.foods.begin()), question.supplementRetained,
                          question.supplementEaten};
  SupplementAdvice advice{.food = question.supplement, .retained = use.retained, .eaten = use.eaten};
  advice.dose = smallestDose(problem, eaten, use);
  const double grams = advice.dose.grams.value_or(0.0);
  const diet::Diet with = withDose(problem, eaten, use, grams);
  advice.after = zonesOf(problem, {}, with);
  advice.caPBefore = ratioIn(problem, eaten);
  advice.caPAfter = ratioIn(problem, with);
  for (const double retained : {1.0, 0.75, 0.5, 0.25})
    for (const double share : {1.0, 0.8}) {
      const SupplementUse other{use.supplement, retained, share};
      advice.sensitivity.push_back({retained, share, smallestDose(problem, eaten, other),
                                    ratioIn(problem, withDose(problem, eaten, other, grams))});
    }
  return advice;
}

/// Of the sums over days on which both are known: an error that lies in both counts as it moves the ratio.
void addRatioOfPeriod(CalciumReview& review, std::span<const intake::EatenBowl> bowls,
                      const CalciumQuestion& question) {
  const diet::BalanceProblem& problem = question.problem;
  const auto days = [&](food::NutrientId nutrient) {
    return intake::dailyIntake(bowls,
                               intake::Contents::ofNutrient(problem.foods, problem.energyMethod, nutrient));
  };
  const auto calcium = days(food::nutrients::calcium());
  const auto phosphorus = days(food::nutrients::phosphorus());
  intake::Uncertain above;
  intake::Uncertain below;
  double offeredAbove = 0.0;
  double offeredBelow = 0.0;
  for (std::size_t i = 0; i < calcium.size(); ++i) {
    offeredAbove += calcium[i].offered;
    offeredBelow += phosphorus[i].offered;
    if (!calcium[i].eaten || !phosphorus[i].eaten) continue;
    above += *calcium[i].eaten;
    below += *phosphorus[i].eaten;
  }
  if (offeredBelow > 0.0) review.ratioOffered = offeredAbove / offeredBelow;
  if (!(below.value() > 0.0)) return;
  const intake::Uncertain ratio = intake::quotient(above, below);
  review.ratioEaten = ratio.value();
  review.ratioSd = ratio.sd();
}

}  // namespace

std::vector<food::NutrientId> calciumNutrients() {
  std::vector<food::NutrientId> nutrients;
  for (const char* tagname : {"CA", "P", "MG", "VITD", "CHOCAL"})
    nutrients.push_back(food::findByTagname(tagname).value());
  return nutrients;
}

CalciumReview reviewCalcium(const CalciumQuestion& question) {
  CalciumReview review{.from = question.from, .to = question.to};
  review.daysOfPeriod = static_cast<std::size_t>(
      (std::chrono::sys_days(question.to) - std::chrono::sys_days(question.from)).count() + 1);
  const std::vector<intake::EatenBowl> bowls = withRetained(question.bowls, question.retained);
  const diet::BalanceProblem problem = calciumProblem(question.problem);
  const MeanBowl mean = meanBowl(bowls, question);
  review.daysWithBowls = mean.days;
  review.completeDays = mean.completeDays;
  for (const food::NutrientId nutrient : calciumNutrients())
    review.strands.push_back(strandOf(nutrient, bowls, question));
  review.ratio = ratioDays(bowls, question);
  addRatioOfPeriod(review, bowls, question);
  review.zones = zonesOf(problem, mean.days == 0 ? diet::Diet{} : mean.offered, mean.eaten);
  const std::vector<FoodGrams> eaten = gramsEaten(problem, mean.eaten);
  review.oxalate = oxalateShare(problem.foods, eaten);
  review.phytate = phytateShare(problem.foods, eaten);
  review.advice = adviceOn(question, problem, mean.eaten);
  return review;
}

}  // namespace tarebowl::health
