// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/continuous_solver.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr int kMostEvents = 200;  // while lambda comes down
constexpr int kMostTrials = 200;

}  // namespace

double violationBudget(double leastViolation) {
  return leastViolation * (1.0 + 1e-6) + 1e-9;
}

void ContinuousSolver::reserve(Eigen::Index rows, Eigen::Index columns) {
  set_.reserve(rows, columns);
  path_.reserve(set_.form());
  reserveAnswer(rows, columns);
  columnMultipliers_.setZero(columns);
  gradient_.setZero(columns);
  hessian_.setOnes(columns);
  blockingRows_.reserve(std::size_t(rows));
}

void ContinuousSolver::assign(const ContinuousProgram& program) {
  if (program.rows.rows() != rowCount() || program.rows.cols() != columnCount() || mode_ == Mode::None)
    reserve(program.rows.rows(), program.rows.cols());
  rows_ = program.rows;
  rowLower_ = program.rowLower;
  rowUpper_ = program.rowUpper;
  price_ = program.price;
  lower_ = program.lower;
  upper_ = program.upper;
  centre_ = program.centre;
  curvature_ = program.curvature;
  cost_ = program.cost;
  set_.forget();
  mode_ = Mode::Lexicographic;
  modeLambda_ = kInfinity;
  scale_ = objectiveScale();
  placeAll();
}

/// The objective is divided by what it amounts to, so that its numbers are near those of the scaled rows.
double ContinuousSolver::objectiveScale() const {
  double largest = 0.0;
  double least = kInfinity;
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    const double amount = std::max(std::abs(centre_[j]), lower_[j]);
    largest = std::max(largest, 2.0 * curvature_[j] * amount * amount);
    if (upper_[j] > 0) least = std::min(least, 2.0 * curvature_[j] * upper_[j] * upper_[j]);
  }
  const double size = largest > 0 ? largest : least;
  return size > 0 && size < kInfinity ? 1.0 / size : 1.0;
}

void ContinuousSolver::placeAll() {
  hessian_ = (2.0 * scale_) * curvature_;
  amount_ = hessian_.cwiseSqrt().cwiseInverse();  // at which a column's term of the objective is a half
  set_.assign(rows_, hessian_);
  for (Eigen::Index j = 0; j < columnCount(); ++j) placeColumn(j);
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    set_.setRow(i, rowLower_[i], rowUpper_[i]);
    placeCap(i);
  }
  columnsAreOld_ = false;
}

void ContinuousSolver::placeColumn(Eigen::Index column) {
  set_.setColumn(column, lower_[column], upper_[column]);
  set_.setCentre(column, centre_[column] - cost_[column] / (2.0 * curvature_[column]));
}

void ContinuousSolver::placeCap(Eigen::Index row) {
  TwoLevel cap = kWithoutEnd;
  if (price_[row] < kInfinity && mode_ == Mode::Lexicographic) cap = {price_[row], 0.0};
  if (price_[row] < kInfinity && mode_ == Mode::Priced && modeLambda_ < kInfinity)
    cap = {0.0, price_[row] * modeLambda_ * scale_};
  set_.setCap(row, cap);
}

void ContinuousSolver::setRowBounds(Eigen::Index row, double lower, double upper) {
  rowLower_[row] = lower;
  rowUpper_[row] = upper;
  set_.setRow(row, lower, upper);
  const bool isHeld = set_.state(row) != DualActiveSet::State::Inactive;
  if (isHeld && !(std::abs(set_.sign(row) > 0 ? upper : lower) < kInfinity)) set_.forget();
}

void ContinuousSolver::setColumnBounds(Eigen::Index column, double lower, double upper) {
  lower_[column] = lower;
  upper_[column] = upper;
  set_.setColumn(column, lower, upper);
  const Eigen::Index k = rowCount() + column;
  const bool isHeld = set_.state(k) != DualActiveSet::State::Inactive;
  if (isHeld && !(std::abs(set_.sign(k) > 0 ? upper : lower) < kInfinity)) set_.forget();
}

void ContinuousSolver::setPrice(Eigen::Index row, double price) {
  price_[row] = price;
  if (mode_ == Mode::Lexicographic && set_.isPriced()) set_.forget();
  placeCap(row);
}

void ContinuousSolver::setCentre(Eigen::Index column, double centre) {
  centre_[column] = centre;
  placeColumn(column);
}

void ContinuousSolver::setCost(Eigen::Index column, double cost) {
  cost_[column] = cost;
  placeColumn(column);
}

void ContinuousSolver::replaceColumn(Eigen::Index column, const Column& with) {
  for (Eigen::Index i = 0; i < rowCount(); ++i) rows_(i, column) = with.coefficients[std::size_t(i)];
  lower_[column] = with.lower;
  upper_[column] = with.upper;
  centre_[column] = with.centre;
  curvature_[column] = with.curvature;
  cost_[column] = with.cost;
  columnsAreOld_ = true;
}

void ContinuousSolver::prepare(Mode mode, double lambda) {
  const bool isNewMode = mode != mode_;
  const bool isNewLambda =
      mode == Mode::Priced && (isNewMode || lambda < modeLambda_ || lambda > modeLambda_);
  if (isNewMode || (columnsAreOld_ && set_.isPriced())) set_.forget();
  mode_ = mode;
  modeLambda_ = lambda;
  if (columnsAreOld_) {
    placeAll();
  } else if (isNewMode || isNewLambda) {
    for (Eigen::Index i = 0; i < rowCount(); ++i) placeCap(i);
  }
  iterations_ = 0;
}

Status ContinuousSolver::end(Status status, std::string_view reason) {
  status_ = status;
  reason_ = reason;
  if (status != Status::Optimal) set_.forget();
  return status;
}

Status ContinuousSolver::solve(Budget budget) {
  prepare(Mode::Lexicographic, kInfinity);
  return retried(budget, -1.0);
}

Status ContinuousSolver::solveWithin(double violation) {
  prepare(Mode::Lexicographic, kInfinity);
  return retried(Budget::Spent, violation);
}

Status ContinuousSolver::solveAtPrice(double lambda) {
  prepare(Mode::Priced, lambda);
  return retried(Budget::Exact, -1.0);
}

/// Some row may be missed at a price that counts for infinitely more than the objective.
bool ContinuousSolver::isElastic() const {
  return mode_ == Mode::Lexicographic && (price_.array() < kInfinity).any();
}

/// A warm answer that is not what it should be, which forgets the working set, is tried once more.
Status ContinuousSolver::retried(Budget budget, double within) {
  if (boundsCross()) return end(Status::Infeasible, "a lower bound lies above its upper bound");
  const bool wasWarm = !set_.isNew();
  set_.mayJump(isElastic());
  Status status = attempt(budget, within);
  if (status != Status::Optimal && wasWarm && set_.isNew()) status = attempt(budget, within);
  if (status != Status::Failed || !set_.hasJumped()) return status;
  set_.mayJump(false);
  return attempt(budget, within);
}

Status ContinuousSolver::runOn() {
  const DualActiveSet::Outcome outcome = set_.run();
  iterations_ += set_.iterations();
  if (outcome == DualActiveSet::Outcome::Infeasible) {
    set_.blockingRows(blockingRows_);
    return end(Status::Infeasible, "hard rows and limits contradict each other");
  }
  if (outcome == DualActiveSet::Outcome::IterationLimit)
    return end(Status::Failed, "nearest stage: iteration limit");
  return Status::Optimal;
}

Status ContinuousSolver::attemptAtPrice() {
  take(modeLambda_ * scale_);
  least_ = violation_;
  lambda_ = modeLambda_;
  return isVerified(modeLambda_) ? end(Status::Optimal, "")
                                 : end(Status::Failed, "nearest stage: not verified");
}

/// Reads the answer at V* itself, multipliers as at the least lambda that leaves it so, and verifies V*.
bool ContinuousSolver::readAtLeastViolation() {
  error_ = 0.0;
  double lambda = ActivePath::leastLambda(set_).lambda;
  take(lambda);
  if (!isLeastViolation()) return false;
  least_ = violation_;
  if (least_ <= kNoViolation) {
    least_ = violation_ = 0.0;
    if (!set_.isPriced()) lambda = kInfinity;
  }
  lambda_ = lambda / scale_;
  return true;
}

Status ContinuousSolver::attempt(Budget budget, double within) {
  error_ = 0.0;
  if (const Status status = runOn(); status != Status::Optimal) return status;
  if (mode_ == Mode::Priced) return attemptAtPrice();
  if (!readAtLeastViolation()) return end(Status::Failed, "not verified");
  const double most = within >= 0 ? within : violationBudget(least_);
  if (least_ > most) {  // verified: the next solve may go on from here
    reason_ = "no answer within the given violation";
    return status_ = Status::Infeasible;
  }
  if (budget == Budget::Exact || (least_ <= 0 && within < 0))
    return isVerified(lambda_) ? end(Status::Optimal, "") : end(Status::Failed, "not verified");
  return spend(least_ + (1.0 - kSpare) * (most - least_));
}

/// The second stage within a budget: the path as lambda comes down; where rounding led that astray, by trial.
Status ContinuousSolver::spend(double budget) {
  const ActivePath::Leaving first = ActivePath::leastLambda(set_);
  const double lambda = first.lambda;
  path_.keep(set_);
  const double error = error_;
  ActivePath::fixLambda(set_, lambda);
  ActivePath::leave(set_, first);
  double reached = lowerLambda(lambda, budget);
  take(reached);
  bool isDone = violation_ <= budget + kSpare * (budget - least_) && isVerified(reached / scale_);
  path_.restore(set_);
  if (!isDone) {
    error_ = error;
    ActivePath::fixLambda(set_, lambda);
    reached = tryLambdas(lambda, budget);
    isDone = violation_ <= budget && isVerified(reached / scale_);
    path_.restore(set_);
  }
  if (!isDone) {  // at V* itself the answer was found by then: within the budget, if not the last millionth
                  // better
    error_ = error;
    reached = lambda;
    take(lambda);
    isDone = isVerified(lambda / scale_);
  }
  lambda_ = reached / scale_;
  return isDone ? end(Status::Optimal, "") : end(Status::Failed, "nearest stage: not verified");
}

/// Lowers lambda from where the answer begins to change until the violation has grown to the budget.
double ContinuousSolver::lowerLambda(double lambda, double budget) {
  path_.clearRates();
  const NormalForm& form = set_.form();
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    if (price_[i] < kInfinity) path_.setCapRate(i, -price_[i] * form.norm(i));
  }
  double violation = violation_;
  for (int event = 0; event < kMostEvents && lambda > 0; ++event) {
    path_.direct(set_);
    double rate = 0.0;
    for (Eigen::Index i = 0; i < rowCount(); ++i) {
      if (set_.state(i) == DualActiveSet::State::Capped)
        rate += price_[i] * form.norm(i) * path_.beyondRate(set_, i);
    }
    const double length = std::min(path_.reach(set_), lambda);
    if (rate > 0 && violation + rate * length >= budget) {
      const double last = std::max(0.0, (budget - violation) / rate);
      path_.advance(set_, last);
      return lambda - last;
    }
    path_.advance(set_, length);
    lambda -= length;
    violation += rate * length;
    if (lambda <= 0 || path_.pass(set_) == ActivePath::Passed::Ended) break;
  }
  return std::max(0.0, lambda);
}

/// The same by regula falsi between lambda = 0 and one at which the violation is the least.
double ContinuousSolver::tryLambdas(double within, double budget) {
  const auto violationAt = [&](double lambda) {
    for (Eigen::Index i = 0; i < rowCount(); ++i) {
      if (price_[i] < kInfinity) set_.setCap(i, {0.0, price_[i] * lambda});
    }
    if (set_.run() != DualActiveSet::Outcome::Optimal) return kInfinity;
    take(lambda);
    return violation_;
  };
  double beyond = 0.0;
  double beyondBy = violationAt(beyond) - budget;
  if (beyondBy <= 0) return beyond;
  double withinBy = violationAt(within) - budget;
  for (int round = 0; round < kMostTrials && withinBy < -kSpare * (budget - least_); ++round) {
    if (within - beyond <= 1e-15 * within) break;
    const double share =
        round % 3 == 2 ? 0.5 : std::clamp(beyondBy / (beyondBy - withinBy), 1e-3, 1.0 - 1e-3);
    const double lambda = beyond + share * (within - beyond);
    const double by = violationAt(lambda) - budget;
    (by <= 0 ? within : beyond) = lambda;
    (by <= 0 ? withinBy : beyondBy) = by;
  }
  violationAt(within);
  return within;
}

/// Reads the answer, with a number in for lambda (both in terms of the scaled objective).
void ContinuousSolver::take(double lambda) {
  const double unscaled = 1.0 / scale_;
  set_.point(x_);
  for (Eigen::Index i = 0; i < rowCount(); ++i) {
    const TwoLevel multiplier = set_.multiplier(i);
    double number = (multiplier.high != 0.0 ? multiplier.at(lambda) : multiplier.low) * unscaled;
    const double most = price_[i] * lambda * unscaled;
    if (most < kInfinity) number = std::clamp(number, -most, most);
    rowMultipliers_[i] = number;
    const bool isNone = price_[i] < kInfinity && std::abs(multiplier.high) <= kNoMultiplier * price_[i];
    violationMultipliers_[i] = isNone ? 0.0 : multiplier.high;
  }
  for (Eigen::Index j = 0; j < columnCount(); ++j) {
    const TwoLevel multiplier = set_.multiplier(rowCount() + j);
    columnMultipliers_[j] = (multiplier.high != 0.0 ? multiplier.at(lambda) : multiplier.low) * unscaled;
  }
  measure();
}

void ContinuousSolver::measure() {
  measureViolation();
  objective_ = (curvature_.array() * (x_ - centre_).array().square()).sum() + cost_.dot(x_);
}

bool ContinuousSolver::isVerified(double priceFactor) {
  gradient_ = 2.0 * curvature_.cwiseProduct(x_ - centre_) + cost_;
  gradientSize_ =
      2.0 * curvature_.cwiseProduct(x_.cwiseAbs() + centre_.cwiseAbs() + amount_) + cost_.cwiseAbs();
  return isBalanced(gradient_, priceFactor);
}

}  // namespace tarebowl::solver
