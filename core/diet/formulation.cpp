// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/diet/formulation.h"

#include <algorithm>
#include <limits>

namespace tarebowl::diet {
namespace {

constexpr double kGramsPerKilogram = 1000.0;

Eigen::Index foodCount(const BalanceProblem& problem) {
  return static_cast<Eigen::Index>(problem.foods.size());
}

std::vector<RowOrigin> rowsOf(std::span<const Measure> measures) {
  std::vector<RowOrigin> rows;
  for (std::size_t i = 0; i < measures.size(); ++i) {
    const Measure& measure = measures[i];
    if (!measure.defect.empty() || (!measure.hard && !(measure.weight > 0.0))) continue;
    for (const BoundSide side : {BoundSide::Min, BoundSide::Max}) {
      if (measure.bound(side)) rows.push_back({i, side});
    }
  }
  return rows;
}

/// part - bound · whole, per gram of each food. A food that stands exactly at the bound gets 0, and not the
/// last digit that the subtraction leaves: where it is the only food, the solver would take that digit for a
/// rule.
Eigen::VectorXd excessPerGram(const Measure& measure, double bound) {
  constexpr double kRounding = 4 * std::numeric_limits<double>::epsilon();
  const Eigen::ArrayXd part = measure.part.perGram.array();
  const Eigen::ArrayXd allowed = bound * measure.whole.perGram.array();
  const Eigen::ArrayXd excess = part - allowed;
  return (excess.abs() > kRounding * (part.abs() + allowed.abs())).select(excess, 0.0).matrix();
}

void writeRows(Formulation& formulation, std::span<const Measure> measures, Eigen::Index foods) {
  solver::Program& program = formulation.program;
  formulation.rows = rowsOf(measures);
  const auto count = static_cast<Eigen::Index>(formulation.rows.size());
  program.rows = solver::RowMatrix::Zero(count, foods);
  program.rowLower = program.rowUpper = program.price = Eigen::VectorXd::Zero(count);
  const bool scatters = std::ranges::any_of(formulation.rows, [&](const RowOrigin& origin) {
    const Measure& measure = measures[origin.measure];
    return measure.guard > 0.0 && measure.partSd.maxCoeff() > 0.0;
  });
  if (scatters) program.scatter = solver::RowMatrix::Zero(count, foods);
  for (Eigen::Index row = 0; row < count; ++row) {
    const RowOrigin& origin = formulation.rows[static_cast<std::size_t>(row)];
    writeRow(program, row, measures[origin.measure], origin.side);
  }
}

void writeLimits(solver::Program& program, const BalanceProblem& problem) {
  const Eigen::Index foods = foodCount(problem);
  program.lower = program.upper = program.step = Eigen::VectorXd::Zero(foods);
  for (Eigen::Index j = 0; j < foods; ++j) {
    const DietFood& food = problem.foods[static_cast<std::size_t>(j)];
    program.lower[j] = std::max(0.0, food.min.value());
    program.upper[j] = food.max ? food.max->value() : solver::kInfinity;
    if (problem.wholeSteps) program.step[j] = std::max(0.0, food.scaleStep.value());
  }
}

solver::Choice choiceFrom(const ChoiceRule& rule, const BalanceProblem& problem,
                          const solver::Program& program) {
  solver::Choice choice;
  choice.atLeast = rule.atLeast;
  if (rule.atMost) choice.atMost = *rule.atMost;
  choice.threshold = rule.minEach.value();
  double leastStep = solver::kInfinity;
  for (Eigen::Index j = 0; j < foodCount(problem); ++j) {
    if (problem.foods[static_cast<std::size_t>(j)].group != rule.group) continue;
    choice.members.push_back(j);
    leastStep = std::min(leastStep, program.step[j]);
  }
  // On the scale's grid a food is used from one step on: without this, 0 g would count as used where no least
  // amount is asked.
  if (!choice.members.empty()) choice.threshold = std::max(choice.threshold, leastStep);
  return choice;
}

void writeObjective(solver::Program& program, const BalanceProblem& problem, const Diet& reference) {
  const Eigen::Index foods = foodCount(problem);
  program.centre = program.curvature = program.cost = Eigen::VectorXd::Zero(foods);
  switch (problem.objective.kind) {
    case Objective::Kind::Closest:
    case Objective::Kind::FewestFoods:
      program.centre = gramsOf(problem, reference);
      program.curvature = distanceUnits(program.centre).array().square().inverse().matrix();
      return;
    case Objective::Kind::LowestCost:
      for (Eigen::Index j = 0; j < foods; ++j) {
        program.cost[j] =
            problem.foods[static_cast<std::size_t>(j)].costPerKg.value_or(0.0) / kGramsPerKilogram;
      }
      return;
    case Objective::Kind::Lowest:
    case Objective::Kind::Highest:
      if (!problem.objective.nutrient) return;
      program.cost = nutrientSupply(problem, *problem.objective.nutrient).perGram;
      if (problem.objective.kind == Objective::Kind::Highest) program.cost = -program.cost;
      return;
  }
}

}  // namespace

Eigen::VectorXd distanceUnits(const Eigen::VectorXd& reference) {
  return reference.cwiseMax(kLeastDistanceShare * reference.sum());
}

/// The excess over the shortfall unit, against 0; what does not depend on the grams goes to the other side.
void writeRow(solver::Program& program, Eigen::Index row, const Measure& measure, BoundSide side) {
  const double bound = *measure.bound(side);
  const double unit = measure.shortfallUnit(bound);
  program.rows.row(row) = excessPerGram(measure, bound).transpose() / unit;
  const double limit = (bound * measure.whole.constant - measure.part.constant) / unit;
  program.rowLower[row] = side == BoundSide::Min ? limit : -solver::kInfinity;
  program.rowUpper[row] = side == BoundSide::Max ? limit : solver::kInfinity;
  program.price[row] = measure.hard ? solver::kInfinity : measure.weight;
  if (program.scatter) program.scatter->row(row) = measure.guard * measure.partSd.transpose() / unit;
}

Columns columnsOf(const Formulation& formulation, std::span<const Measure> over, std::size_t foods) {
  const auto m = static_cast<Eigen::Index>(formulation.rows.size());
  const auto n = static_cast<Eigen::Index>(foods);
  Columns columns{solver::RowMatrix::Zero(m, n), std::nullopt};
  if (formulation.program.scatter) columns.scatter = solver::RowMatrix::Zero(m, n);
  for (Eigen::Index row = 0; row < m; ++row) {
    const RowOrigin& origin = formulation.rows[static_cast<std::size_t>(row)];
    const Measure& measure = over[origin.measure];
    const double bound = *measure.bound(origin.side);
    const double unit = measure.shortfallUnit(bound);
    columns.rows.row(row) = excessPerGram(measure, bound).transpose() / unit;
    if (columns.scatter) columns.scatter->row(row) = measure.guard * measure.partSd.transpose() / unit;
  }
  return columns;
}

Formulation formulate(const BalanceProblem& problem, std::span<const Measure> measures,
                      const Diet& reference) {
  Formulation formulation;
  writeRows(formulation, measures, foodCount(problem));
  writeLimits(formulation.program, problem);
  for (const ChoiceRule& rule : problem.choices) {
    formulation.program.choices.push_back(choiceFrom(rule, problem, formulation.program));
    formulation.choices.push_back(rule.group);
  }
  writeObjective(formulation.program, problem, reference);
  return formulation;
}

}  // namespace tarebowl::diet
