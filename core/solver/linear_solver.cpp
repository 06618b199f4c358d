// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/linear_solver.h"

#include "core/solver/power_of_two.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kGenerous = 1e4;  // a column without a limit may take this many times what is usual
constexpr int kMostEdges = 200;    // while lambda comes down

double largestFinite(const Eigen::VectorXd& values) {
  double largest = 0.0;
  for (const double value : values) {
    if (std::abs(value) < kInfinity) largest = std::max(largest, std::abs(value));
  }
  return largest;
}

}  // namespace

void LinearSolver::assign(const ContinuousProgram& program, std::span<const char> far) {
  rows_ = program.rows;
  rowLower_ = program.rowLower;
  rowUpper_ = program.rowUpper;
  price_ = program.price;
  lower_ = program.lower;
  upper_ = program.upper;
  cost_ = program.cost;
  isFar_.assign(far.begin(), far.end());
  isFar_.resize(std::size_t(rows_.cols()), 0);
  double typical = std::max(largestFinite(lower_), program.centre.cwiseAbs().sum());
  for (Eigen::Index j = 0; j < upper_.size(); ++j) {
    if (isFar_[std::size_t(j)] == 0 && upper_[j] < kInfinity)
      typical = std::max(typical, std::abs(upper_[j]));
  }
  unit_ = powerOfTwoNear((typical > 0 ? typical : 1.0) / 8);
  generous_ = kGenerous * (typical > 0 ? typical : 1.0);
  const Eigen::Index m = rows_.rows();
  const Eigen::Index n = rows_.cols();
  amount_.setConstant(n, unit_);
  reserveAnswer(m, n);
  multiplierSize_.setZero(m);
  mode_ = Mode::Lexicographic;
  modeLambda_ = kInfinity;
  scale();
}

/// Rows by their largest coefficient, costs and prices by their largest: µg and kcal meet here.
void LinearSolver::scale() {
  const Eigen::Index m = rows_.rows();
  const Eigen::Index n = rows_.cols();
  rowScale_.resize(m);
  double most = 0.0;
  for (Eigen::Index i = 0; i < m; ++i) {
    rowScale_[i] = n > 0 ? powerOfTwoNear(unit_ * rows_.row(i).cwiseAbs().maxCoeff()) : 1.0;
    if (price_[i] < kInfinity) most = std::max(most, price_[i] * rowScale_[i]);
  }
  priceScale_ = 1.0 / powerOfTwoNear(most);
  costScale_ = 1.0 / powerOfTwoNear(unit_ * largestFinite(cost_));
  RowMatrix scaled = unit_ * rows_;
  for (Eigen::Index i = 0; i < m; ++i) scaled.row(i) /= rowScale_[i];
  simplex_.assign(scaled, std::vector<LexicographicSimplex::Band>(std::size_t(m + n)));
  for (Eigen::Index j = 0; j < n; ++j) placeColumn(j);
  for (Eigen::Index i = 0; i < m; ++i) placeRow(i);
}

double LinearSolver::highOf(Eigen::Index column) const {
  return upper_[column] < kInfinity ? upper_[column] : generous_;
}

LexicographicSimplex::Band LinearSolver::bandOf(Eigen::Index column) const {
  const bool isFar = isFar_[std::size_t(column)] != 0 || !(upper_[column] < kInfinity);
  const TwoLevel slope{0.0, costScale_ * unit_ * cost_[column]};
  return {lower_[column] / unit_, highOf(column) / unit_, slope, kWithoutEnd, isFar};
}

void LinearSolver::placeColumn(Eigen::Index column) {
  simplex_.setBand(column, bandOf(column));
}

void LinearSolver::placeRow(Eigen::Index row) {
  const double scale = rowScale_[row];
  TwoLevel price = kWithoutEnd;
  if (price_[row] < kInfinity && mode_ == Mode::Lexicographic)
    price = {priceScale_ * price_[row] * scale, 0.0};
  if (price_[row] < kInfinity && mode_ == Mode::Priced && modeLambda_ < kInfinity)
    price = {0.0, costScale_ * modeLambda_ * price_[row] * scale};
  simplex_.setBand(columnCount() + row, {rowLower_[row] / scale, rowUpper_[row] / scale, {}, price, false});
}

void LinearSolver::setRowBounds(Eigen::Index row, double lower, double upper) {
  rowLower_[row] = lower;
  rowUpper_[row] = upper;
  placeRow(row);
}

void LinearSolver::setPrice(Eigen::Index row, double price) {
  price_[row] = price;
  placeRow(row);
}

void LinearSolver::setColumnBounds(Eigen::Index column, double lower, double upper) {
  lower_[column] = lower;
  upper_[column] = upper;
  placeColumn(column);
}

void LinearSolver::setCost(Eigen::Index column, double cost) {
  cost_[column] = cost;
  placeColumn(column);
}

Eigen::VectorXd LinearSolver::scaledColumn(Eigen::Index column) const {
  return unit_ * rows_.col(column).cwiseQuotient(rowScale_);
}

void LinearSolver::replaceColumn(Eigen::Index column, const Column& with) {
  for (Eigen::Index i = 0; i < rowCount(); ++i) rows_(i, column) = with.coefficients[std::size_t(i)];
  lower_[column] = with.lower;
  upper_[column] = with.upper;
  cost_[column] = with.cost;
  isFar_[std::size_t(column)] = 0;
  simplex_.replaceColumn(column, scaledColumn(column), bandOf(column));
}

void LinearSolver::prepare(Mode mode, double lambda) {
  const bool isOther = mode != mode_ || lambda < modeLambda_ || lambda > modeLambda_;
  mode_ = mode;
  modeLambda_ = lambda;
  if (!isOther) return;
  for (Eigen::Index i = 0; i < rowCount(); ++i) placeRow(i);
}

Status LinearSolver::end(Status status, std::string_view reason) {
  status_ = status;
  reason_ = reason;
  if (status != Status::Optimal) simplex_.forget();
  return status;
}

Status LinearSolver::solve(Budget budget) {
  prepare(Mode::Lexicographic, kInfinity);
  return retried(budget, -1.0);
}

Status LinearSolver::solveWithin(double violation) {
  prepare(Mode::Lexicographic, kInfinity);
  return retried(Budget::Spent, violation);
}

Status LinearSolver::solveAtPrice(double lambda) {
  prepare(Mode::Priced, lambda);
  return retried(Budget::Exact, -1.0);
}

/// A warm answer that is not what it should be, which forgets the basis, is tried once more.
Status LinearSolver::retried(Budget budget, double within) {
  if (boundsCross()) return end(Status::Infeasible, "a lower bound lies above its upper bound");
  const bool wasWarm = !simplex_.isNew();
  const Status first = attempt(budget, within);
  return first == Status::Optimal || !wasWarm || !simplex_.isNew() ? first : attempt(budget, within);
}

Status LinearSolver::attempt(Budget budget, double within) {
  error_ = 0.0;
  switch (simplex_.run()) {
    case LexicographicSimplex::Outcome::Infeasible:
      return end(Status::Infeasible, "hard rows and limits contradict each other");
    case LexicographicSimplex::Outcome::Unbounded:
    case LexicographicSimplex::Outcome::IterationLimit:
      return end(Status::Failed, "linear stage: iteration limit");
    case LexicographicSimplex::Outcome::Optimal:
      break;
  }
  simplex_.read(reading_);
  if (pressesGenerousLimit()) return end(Status::Unbounded, "no limit");
  if (mode_ == Mode::Priced) {
    take(modeLambda_);
    least_ = violation_;
    lambda_ = modeLambda_;
    if (!isVerified(modeLambda_)) return end(Status::Failed, "linear stage: not verified");
  } else {
    if (!readAtLeastViolation()) return end(Status::Failed, "linear stage: not verified");
    const double most = within >= 0 ? within : violationBudget(least_);
    if (least_ > most) {  // verified: the next solve may go on from here
      reason_ = "no answer within the given violation";
      return status_ = Status::Infeasible;
    }
    const bool mustSpend = budget == Budget::Spent && (least_ > 0 || within >= 0);
    if (mustSpend && spend(most) != Status::Optimal) return status_;
  }
  return end(Status::Optimal, "");
}

/// Reads and verifies the answer at V* itself, multipliers as at the least lambda that leaves it so.
bool LinearSolver::readAtLeastViolation() {
  error_ = 0.0;
  simplex_.read(reading_);
  double lambda = simplex_.leastLambda().lambda * priceScale_ / costScale_;
  take(lambda);
  if (!isLeastViolation()) return false;
  least_ = violation_;
  if (least_ <= kNoViolation) {
    least_ = violation_ = 0.0;
    if ((violationMultipliers_.array() == 0.0).all()) lambda = kInfinity;
  }
  lambda_ = lambda;
  return isVerified(lambda_);
}

/// The second stage within a budget: lambda comes down from where the answer begins to change, edge by edge,
/// until the violation has grown to the budget.
Status LinearSolver::spend(double budget) {
  const LexicographicSimplex kept = simplex_;
  const double most = least_ + (1.0 - kSpare) * (budget - least_);
  Eigen::VectorXd rates;
  double reached = least_;
  bool isSpent = false;
  for (int edge = 0; edge < kMostEdges && !isSpent; ++edge) {
    const LexicographicSimplex::Leaving leaving = simplex_.leastLambda();
    lambda_ = leaving.lambda * priceScale_ / costScale_;
    if (leaving.slot < 0) break;
    const double rate = leaving.rate / priceScale_;
    const double length = simplex_.reachOf(leaving);
    isSpent = rate * length >= most - reached;
    if (!isSpent) {
      reached += rate * length;
      simplex_.follow(leaving);
      continue;
    }
    simplex_.columnRates(leaving, rates);
    simplex_.read(reading_);
    reading_.x += std::max(0.0, most - reached) / rate * rates;
  }
  if (!isSpent) simplex_.read(reading_);
  take(lambda_);
  const bool isDone = violation_ <= budget && isVerified(lambda_);
  simplex_ = kept;
  return isDone ? end(Status::Optimal, "") : end(Status::Failed, "linear stage: budget not verified");
}

/// The reading in the units of the program, with a number in for lambda.
void LinearSolver::take(double lambda) {
  x_ = (unit_ * reading_.x).cwiseMax(lower_).cwiseMin(upper_);
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const TwoLevel own{reading_.high[i] / (priceScale_ * rowScale_[i]),
                       reading_.low[i] / (costScale_ * rowScale_[i])};
    double number = own.high != 0.0 ? own.at(lambda) : own.low;
    multiplierSize_[i] = std::abs(own.low) + (own.high != 0.0 ? std::abs(own.high) * lambda : 0.0);
    if (price_[i] < kInfinity && lambda < kInfinity)
      number = std::clamp(number, -price_[i] * lambda, price_[i] * lambda);
    rowMultipliers_[i] = number;
    const bool isNone = price_[i] < kInfinity && std::abs(own.high) <= kNoMultiplier * price_[i];
    violationMultipliers_[i] = isNone ? 0.0 : own.high;
  }
  measure();
}

void LinearSolver::measure() {
  measureViolation();
  objective_ = cost_.dot(x_);
}

bool LinearSolver::isVerified(double priceFactor) {
  gradientSize_ = cost_.cwiseAbs();  // of the terms before both levels were put together
  gradientSize_.noalias() += rows_.cwiseAbs().transpose() * multiplierSize_;
  return isBalanced(cost_, priceFactor);
}

bool LinearSolver::pressesGenerousLimit() const {
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    if (simplex_.band(j).isFar && unit_ * reading_.x[j] >= highOf(j) * (1 - 1e-9)) return true;
  }
  return false;
}

}  // namespace tarebowl::solver
