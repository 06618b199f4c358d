// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every program, whatever its numbers: the answer depends on what is asked, not on how it
// is written down.
#include "core/solver/continuous.h"
#include "core/solver/solve.h"
#include "tests/core/solver/random_program.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace tarebowl::solver {
namespace {

using Eigen::Index;
using Eigen::VectorXd;

struct Asked {
  Program program;
  bool unique;  ///< the grams are, not only what they cost
};

/// Continuous or on a grid, nearest or cheapest, with more or fewer hard rows.
Asked drawProgram() {
  RandomShape shape;
  shape.columns = *rc::gen::inRange<Index>(2, 7);
  shape.rows = *rc::gen::inRange<Index>(1, 10);
  shape.hardShare = 0.1 * *rc::gen::inRange(0, 6);
  shape.linear = *rc::gen::weightedElement<bool>({{2, false}, {1, true}});
  shape.step = *rc::gen::weightedElement<double>({{2, 0.0}, {1, 1.0}});
  std::mt19937 random(*rc::gen::inRange<unsigned>(0, 1'000'000));
  return {randomProgram(random, shape), !shape.linear && shape.step == 0.0};
}

double near(double value) {
  return 1e-6 * (1.0 + std::abs(value));
}

/// Both impossible, or both with the same shortfall and objective.
void expectSameValue(const Solution& one, const Solution& other) {
  RC_ASSERT(one.status == other.status);
  if (one.status == Status::Infeasible) return;
  RC_ASSERT(one.status == Status::Optimal);
  RC_ASSERT(one.gap == 0.0);
  RC_ASSERT(other.gap == 0.0);
  RC_ASSERT(std::abs(one.violation - other.violation) <= near(one.violation));
  RC_ASSERT(std::abs(one.objective - other.objective) <= near(one.objective));
}

void expectSame(const Asked& asked, const Solution& one, const Solution& other) {
  expectSameValue(one, other);
  if (asked.unique && one.status == Status::Optimal)
    RC_ASSERT((one.x - other.x).cwiseAbs().maxCoeff() <= 1e-4);
}

std::vector<Index> drawOrder(Index count) {
  std::vector<Index> order(static_cast<std::size_t>(count));
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = static_cast<Index>(i);
  for (std::size_t i = 1; i < order.size(); ++i)
    std::swap(order[i], order[*rc::gen::inRange<std::size_t>(0, i + 1)]);
  return order;
}

Program withRow(const Program& program, const VectorXd& row, double lower, double upper, double price) {
  Program more = program;
  const Index m = program.rowCount();
  more.rows.conservativeResize(m + 1, program.variableCount());
  more.rows.row(m) = row.transpose();
  for (VectorXd* part : {&more.rowLower, &more.rowUpper, &more.price}) part->conservativeResize(m + 1);
  more.rowLower[m] = lower;
  more.rowUpper[m] = upper;
  more.price[m] = price;
  return more;
}

RC_GTEST_PROP(AnyProgram, ScalingARowWithItsBoundsAndPriceChangesNothing, ()) {
  const Asked asked = drawProgram();
  Program scaled = asked.program;
  const Index i = *rc::gen::inRange<Index>(0, scaled.rowCount());
  const double factor = std::pow(10.0, *rc::gen::inRange(-4, 5)) * 1.7;
  scaled.rows.row(i) *= factor;
  scaled.rowLower[i] *= factor;
  scaled.rowUpper[i] *= factor;
  scaled.price[i] /= factor;
  expectSame(asked, solve(asked.program), solve(scaled));
}

RC_GTEST_PROP(AnyProgram, CountingAFoodInAnotherUnitChangesNothing, ()) {
  const Asked asked = drawProgram();
  Program scaled = asked.program;
  const Index j = *rc::gen::inRange<Index>(0, scaled.variableCount());
  const double unit = std::pow(10.0, *rc::gen::inRange(-3, 4)) * 2.5;
  scaled.rows.col(j) *= unit;
  for (VectorXd* amount : {&scaled.lower, &scaled.upper, &scaled.step, &scaled.centre}) (*amount)[j] /= unit;
  scaled.curvature[j] *= unit * unit;
  scaled.cost[j] *= unit;
  Solution other = solve(scaled);
  if (other.status == Status::Optimal) other.x[j] *= unit;
  expectSame(asked, solve(asked.program), other);
}

RC_GTEST_PROP(AnyProgram, ARowThatHoldsAnywayChangesNothing, ()) {
  const Asked asked = drawProgram();
  VectorXd row(asked.program.variableCount());
  for (double& value : row) value = 0.1 * *rc::gen::inRange(-10, 11);
  const double least = row.cwiseMin(0.0).dot(asked.program.upper);
  const double most = row.cwiseMax(0.0).dot(asked.program.upper);
  const double price = *rc::gen::element(1.0, kInfinity);
  expectSame(asked, solve(asked.program), solve(withRow(asked.program, row, least - 1.0, most + 1.0, price)));
}

RC_GTEST_PROP(AnyProgram, AnotherOrderOfTheFoodsOrdersTheAnswer, ()) {
  const Asked asked = drawProgram();
  const std::vector<Index> order = drawOrder(asked.program.variableCount());
  Program ordered = asked.program;
  ordered.rows = RowMatrix(asked.program.rows(Eigen::all, order));
  const auto reorder = [&](VectorXd& values) { values = VectorXd(values(order)); };
  for (VectorXd* values :
       {&ordered.lower, &ordered.upper, &ordered.step, &ordered.centre, &ordered.curvature, &ordered.cost})
    reorder(*values);
  Solution one = solve(asked.program);
  if (one.status == Status::Optimal) reorder(one.x);
  expectSame(asked, one, solve(ordered));
}

RC_GTEST_PROP(AnyProgram, AnotherOrderOfTheRowsChangesNothing, ()) {
  const Asked asked = drawProgram();
  const std::vector<Index> order = drawOrder(asked.program.rowCount());
  Program ordered = asked.program;
  ordered.rows = RowMatrix(asked.program.rows(order, Eigen::all));
  for (VectorXd* values : {&ordered.rowLower, &ordered.rowUpper, &ordered.price})
    *values = VectorXd((*values)(order));
  expectSame(asked, solve(asked.program), solve(ordered));
}

RC_GTEST_PROP(AnyProgram, ARowTwiceAtHalfThePriceIsTheRowOnce, ()) {
  const Asked asked = drawProgram();
  Program halved = asked.program;
  const Index i = *rc::gen::inRange<Index>(0, halved.rowCount());
  halved.price[i] /= 2.0;
  const Program twice = withRow(halved, halved.rows.row(i).transpose(), halved.rowLower[i],
                                halved.rowUpper[i], halved.price[i]);
  expectSame(asked, solve(asked.program), solve(twice));
}

RC_GTEST_PROP(AnyProgram, LooseningABoundMakesNothingWorse, ()) {
  const Asked asked = drawProgram();
  Program loose = asked.program;
  const Index i = *rc::gen::inRange<Index>(0, loose.rowCount());
  const double by = 0.1 * *rc::gen::inRange(1, 20);
  loose.rowLower[i] -= by;
  loose.rowUpper[i] += by;
  const Solution before = solve(asked.program);
  const Solution after = solve(loose);
  if (before.status == Status::Infeasible) return;
  RC_ASSERT(after.status == Status::Optimal);
  RC_ASSERT(after.violation <= violationBudget(before.violation) + 1e-9);
  // Where the shortfall fell, the objective may have paid for it.
  if (after.violation >= before.violation - 1e-9)
    RC_ASSERT(after.objective <= before.objective + near(before.objective));
}

/// Limits, grid and hard rows hold.
bool isAllowed(const Program& program, const VectorXd& x) {
  for (Index j = 0; j < x.size(); ++j) {
    const double steps = program.step[j] > 0 ? x[j] / program.step[j] : 0.0;
    if (x[j] < program.lower[j] || x[j] > program.upper[j] || std::abs(steps - std::round(steps)) > 1e-9)
      return false;
  }
  return hardViolation(program, x) <= 0.0;
}

RC_GTEST_PROP(AnyProgram, NoAllowedPointBeatsTheAnswer, ()) {
  const Asked asked = drawProgram();
  const Program& program = asked.program;
  const Solution solution = solve(program);
  const bool answered = solution.status == Status::Optimal;
  if (answered) {
    RC_ASSERT(hardViolation(program, solution.x) <= 1e-9);
    RC_ASSERT(std::abs(elasticViolation(program, solution.x) - solution.violation) <= 1e-9);
  }
  std::mt19937 random(*rc::gen::inRange<unsigned>(0, 1'000'000));
  std::uniform_real_distribution<double> unit(0.0, 1.0);
  for (int k = 0; k < 200; ++k) {
    const double far = std::pow(unit(random), 3.0);  // most points near the answer
    VectorXd x(program.variableCount());
    for (Index j = 0; j < x.size(); ++j) {
      const double any = program.lower[j] + unit(random) * (program.upper[j] - program.lower[j]);
      x[j] = answered ? solution.x[j] + far * (any - solution.x[j]) : any;
      if (program.step[j] > 0) x[j] = std::round(x[j] / program.step[j]) * program.step[j];
    }
    if (!isAllowed(program, x)) continue;
    RC_ASSERT(answered);
    const double violation = elasticViolation(program, x);
    RC_ASSERT(violationBudget(violation) >= solution.violation - 1e-9);
    // A point that is within the least shortfall's budget: at most what the answer itself spends.
    if (violation <= solution.violation)
      RC_ASSERT(objectiveValue(program, x) >= solution.objective - near(solution.objective));
  }
}

/// Every point of a grid of three foods.
std::optional<Solution> bestByTryingAll(const Program& program) {
  std::vector<VectorXd> points;
  for (double a = program.lower[0]; a <= program.upper[0]; ++a) {
    for (double b = program.lower[1]; b <= program.upper[1]; ++b) {
      for (double c = program.lower[2]; c <= program.upper[2]; ++c) {
        points.emplace_back(Eigen::Vector3d(a, b, c));
        if (!isAllowed(program, points.back())) points.pop_back();
      }
    }
  }
  if (points.empty()) return std::nullopt;
  double least = kInfinity;
  for (const VectorXd& x : points) least = std::min(least, elasticViolation(program, x));
  Solution best;
  best.status = Status::Optimal;
  best.objective = kInfinity;
  for (const VectorXd& x : points) {
    if (elasticViolation(program, x) > violationBudget(least)) continue;
    if (objectiveValue(program, x) >= best.objective) continue;
    best.x = x;
    best.violation = elasticViolation(program, x);
    best.objective = objectiveValue(program, x);
  }
  return best;
}

RC_GTEST_PROP(AnyProgram, InWholeStepsTheAnswerIsTheBestOfAllPoints, ()) {
  RandomShape shape{.columns = 3, .rows = *rc::gen::inRange<Index>(1, 12), .step = 1.0, .upper = 8.0};
  shape.hardShare = 0.1 * *rc::gen::inRange(0, 6);
  shape.linear = *rc::gen::arbitrary<bool>();
  std::mt19937 random(*rc::gen::inRange<unsigned>(0, 1'000'000));
  const Program program = randomProgram(random, shape);
  const std::optional<Solution> best = bestByTryingAll(program);
  const Solution solution = solve(program);
  if (!best) {
    RC_ASSERT(solution.status == Status::Infeasible);
    return;
  }
  RC_ASSERT(solution.status == Status::Optimal);
  expectSameValue(*best, solution);
}

}  // namespace
}  // namespace tarebowl::solver
