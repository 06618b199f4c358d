// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/balance.h"
#include "core/diet/formulation.h"
#include "core/diet/solve.h"
#include "tests/core/diet/literal_reading.h"
#include "tests/core/diet/random_problem.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tarebowl::diet {
namespace {

using namespace testing;
using quantity::Unit;

void sameNumber(double a, double b) {
  RC_ASSERT(std::abs(a - b) <= 1e-9 * std::max({1.0, std::abs(a), std::abs(b)}));
}

void sameLines(const Balance& a, const Balance& b) {
  RC_ASSERT(a.targets.size() == b.targets.size());
  for (std::size_t i = 0; i < a.targets.size(); ++i) {
    RC_ASSERT(a.targets[i].value.has_value() == b.targets[i].value.has_value());
    sameNumber(a.targets[i].value.value_or(0), b.targets[i].value.value_or(0));
    sameNumber(a.targets[i].sd, b.targets[i].sd);
    sameNumber(a.targets[i].shortfall, b.targets[i].shortfall);
  }
  sameNumber(a.shortfall, b.shortfall);
}

/// violation_i(x) of the solver's page, times what a row stands for: nothing else than the shortfall of that
/// bound.
std::vector<double> violationsByMeasure(const Formulation& formulation, std::size_t measures,
                                        const Eigen::VectorXd& x) {
  const solver::Program& program = formulation.program;
  std::vector<double> sums(measures, 0.0);
  for (Eigen::Index row = 0; row < program.rowCount(); ++row) {
    const double centre = program.rows.row(row) * x;
    const double margin =
        program.scatter ? program.scatter->row(row).transpose().cwiseProduct(x).norm() : 0.0;
    sums[formulation.rows[static_cast<std::size_t>(row)].measure] +=
        std::max({0.0, program.rowLower[row] - (centre - margin), centre + margin - program.rowUpper[row]});
  }
  return sums;
}

RC_GTEST_PROP(BalanceProperty, agreesWithALiteralReadingOfTheProblemFormat, ()) {
  const BalanceProblem problem = drawProblem();
  const Diet diet = drawDiet(problem);
  const Balance ours = balance(problem, diet);
  const Balance literal = literalBalance(problem, diet);
  sameLines(ours, literal);
  const Eigen::VectorXd dryMatter = dryMatterSupply(problem).perGram.cwiseProduct(gramsOf(problem, diet));
  if (!(dryMatter.sum() > 0)) return;  // of a bowl whose dry matter is unknown the page says nothing
  for (std::size_t i = 0; i < ours.targets.size(); ++i) {
    sameNumber(ours.targets[i].coverage, literal.targets[i].coverage);
    RC_ASSERT((ours.targets[i].state == TargetState::Unknown) == (literal.targets[i].coverage == 0));
  }
}

RC_GTEST_PROP(BalanceProperty, isWhatTheSolversRowsMeasure, ()) {
  const BalanceProblem problem = drawProblem();
  const Diet diet = drawDiet(problem);
  const Balance judged = balance(problem, diet);
  const Formulation formulation = formulate(problem, measuresOf(problem), referenceDiet(problem));
  const auto violations = violationsByMeasure(formulation, judged.targets.size(), gramsOf(problem, diet));
  const auto measures = measuresOf(problem);
  double total = 0;
  for (std::size_t i = 0; i < judged.targets.size(); ++i) {
    if (!measures[i].hard && measures[i].weight == 0) {
      RC_ASSERT(violations[i] == 0.0);
      continue;
    }
    sameNumber(violations[i], judged.targets[i].shortfall);
    if (!measures[i].hard) total += measures[i].weight * violations[i];
  }
  sameNumber(total, judged.shortfall);
}

RC_GTEST_PROP(BalanceProperty, neverSaysMetOfAMissOrMissedOfNone, ()) {
  const BalanceProblem problem = drawProblem();
  for (const TargetBalance& line : balance(problem, drawDiet(problem)).targets) {
    if (line.state == TargetState::Met) RC_ASSERT(line.shortfall <= 2 * kNoShortfall);
    if (line.state == TargetState::Short || line.state == TargetState::Over)
      RC_ASSERT(line.shortfall > kNoShortfall);
    RC_ASSERT(line.coverage >= 0.0);
    RC_ASSERT(line.coverage <= 1.0);
    if (line.coverage < 1.0) RC_ASSERT(line.atLeast);
    if (line.chance) RC_ASSERT(*line.chance >= 0.0 && *line.chance <= 1.0);
  }
}

RC_GTEST_PROP(BalanceProperty, doesNotDependOnTheUnitOfATarget, ()) {
  const BalanceProblem problem = drawProblem();
  const Diet diet = drawDiet(problem);
  BalanceProblem inMilligrams = problem;
  for (animal::Target& target : inMilligrams.targets) {
    if (target.unit != Unit::Gram) continue;
    RC_PRE(target.min.value_or(1) > 0 &&
           target.max.value_or(1) > 0);  // a bound of 0 counts in the unit itself
    target.unit = Unit::Milligram;
    if (target.min) *target.min *= 1000;
    if (target.max) *target.max *= 1000;
  }
  const Balance before = balance(problem, diet);
  const Balance after = balance(inMilligrams, diet);
  sameNumber(before.shortfall, after.shortfall);
  for (std::size_t i = 0; i < before.targets.size(); ++i) {
    sameNumber(before.targets[i].shortfall, after.targets[i].shortfall);
    sameNumber(before.targets[i].coverage, after.targets[i].coverage);
  }
}

RC_GTEST_PROP(BalanceProperty, doesNotDependOnTheOrderOfTheFoods, ()) {
  const BalanceProblem problem = drawProblem();
  const Diet diet = drawDiet(problem);
  BalanceProblem turned = problem;
  Diet turnedDiet = diet;
  const auto by = *rc::gen::inRange<std::ptrdiff_t>(0, static_cast<std::ptrdiff_t>(diet.size()));
  std::rotate(turned.foods.begin(), turned.foods.begin() + by, turned.foods.end());
  std::rotate(turnedDiet.begin(), turnedDiet.begin() + by, turnedDiet.end());
  if (turned.reference)
    std::rotate(turned.reference->begin(), turned.reference->begin() + by, turned.reference->end());
  sameLines(balance(problem, diet), balance(turned, turnedDiet));
}

RC_GTEST_PROP(BalanceProperty, contributionsAddUpToTheAmountEaten, ()) {
  const BalanceProblem problem = drawProblem();
  const Diet diet = drawDiet(problem);
  const food::NutrientId calcium = food::nutrients::calcium();
  double amount = 0;
  double share = 0;
  for (const Contribution& entry : contributions(problem, diet, calcium)) {
    amount += entry.amount.value_or(0);
    share += entry.share;
  }
  const double eaten = nutrientSupply(problem, calcium).perGram.dot(gramsOf(problem, diet));
  sameNumber(amount, eaten);
  sameNumber(share, eaten > 0 ? 1.0 : 0.0);
}

}  // namespace
}  // namespace tarebowl::diet
