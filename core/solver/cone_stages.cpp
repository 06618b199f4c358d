// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/cone_stages.h"

#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kNoViolation = 1e-11;   // stage 1 values below this are rounding
constexpr double kContradiction = 1e-8;  // hard rows that miss by less together may yet hold
constexpr double kLambdaMost = 1e13;
constexpr int kMostPrices = 100;
constexpr double kUnspent = 1e-4;  // of what the second stage may spend, this much need not be spent
constexpr int kMostUnjudged = 12;  // prices without a verified answer between two that have one
constexpr double kHidden = 1e-9;   // of the least violation, by which a high price may miss it
constexpr double kAsGood = 1e-7;   // how far above its bound a mixed answer may lie, relative

ContinuousAnswer ended(Status status, std::string reason) {
  ContinuousAnswer answer;
  answer.status = status;
  answer.reason = std::move(reason);
  return answer;
}

bool pressesLimit(const ScaledProgram& program, const Eigen::VectorXd& z) {
  for (Eigen::Index j = 0; j < z.size(); ++j) {
    if (program.generous[std::size_t(j)] != 0 && z[j] >= program.upper[j] * (1 - 1e-9)) return true;
  }
  return false;
}

SmoothObjective objectiveOf(const ScaledProgram& program) {
  const Program& source = *program.source;
  return {2.0 * source.curvature.cwiseProduct(program.unit.cwiseAbs2()),
          source.centre.cwiseQuotient(program.unit), source.cost.cwiseProduct(program.unit)};
}

}  // namespace

ConeStages::ConeStages(const ConeRows& rows, std::function<bool()> isOver)
    : rows_(rows),
      isOver_(std::move(isOver)),
      objective_(objectiveOf(rows.program())),
      isCurved_((objective_.hessian.array() > 0).any()) {}

ContinuousAnswer ConeStages::measured(const ConePoint& point) const {
  const ScaledProgram& program = rows_.program();
  ContinuousAnswer answer;
  answer.status = point.status;
  answer.reason = point.reason;
  if (point.status != Status::Optimal) return answer;
  const Eigen::VectorXd x = program.toSource(point.z);
  answer.z = point.z;
  answer.violation = elasticViolation(*program.source, x);
  answer.objective = objectiveValue(*program.source, x);
  answer.rowMultipliers = point.multipliers;
  answer.pressesGenerousLimit = pressesLimit(program, point.z);
  return answer;
}

ContinuousAnswer ConeStages::solve(const Box& box, const SmoothObjective& objective,
                                   const Eigen::VectorXd& price) {
  if ((box.lower.array() > box.upper.array()).any()) return ended(Status::Infeasible, "");
  ConePoint point = ConeNewton(rows_, box, objective, isOver_).minimise(price, last_);
  ContinuousAnswer answer = measured(point);
  if (point.status == Status::Optimal) last_ = std::move(point);
  return answer;
}

ContinuousAnswer ConeStages::at(const Box& box, double lambda) {
  Eigen::VectorXd price = rows_.program().price;
  const double ratio = lastLambda_ > 0 && lastLambda_ < kInfinity ? lambda / lastLambda_ : 1.0;
  for (Eigen::Index i = 0; i < price.size(); ++i) {
    if (!(price[i] < kInfinity)) continue;
    price[i] *= lambda;
    if (last_.multipliers.size() > 0)
      last_.multipliers[i] *= ratio;  // what pushed with all of its price still does
  }
  lastLambda_ = lambda;
  return solve(box, objective_, price);
}

ContinuousAnswer ConeStages::allHold(const Box& box) {
  lastLambda_ = kInfinity;
  return solve(box, objective_, Eigen::VectorXd::Constant(rows_.program().price.size(), kInfinity));
}

/// Whether the hard rows alone miss by something, however little of each: then they contradict each other.
bool ConeStages::isImpossible(const Box& box) {
  const Eigen::VectorXd none = Eigen::VectorXd::Zero(box.lower.size());
  const SmoothObjective nothing{none, objective_.centre, none};
  Eigen::VectorXd price = rows_.program().price;
  for (double& p : price) p = p < kInfinity ? 0.0 : 1.0;
  const ConePoint point = ConeNewton(rows_, box, nothing, isOver_).minimise(price, {});
  if (point.status != Status::Optimal) return false;
  double sum = 0.0;
  for (Eigen::Index i = 0; i < price.size(); ++i) sum += price[i] * rows_.violation(i, point.z);
  return sum > kContradiction;
}

/// What the objective comes to at most.
double ConeStages::mostObjective(const Box& box) const {
  double most = 0.0;
  for (Eigen::Index j = 0; j < box.lower.size(); ++j) {
    const auto at = [&](double z) {
      const double by = z - objective_.centre[j];
      return 0.5 * objective_.hessian[j] * by * by + objective_.slope[j] * z;
    };
    most += std::max(at(box.lower[j]), at(box.upper[j]));
  }
  return most;
}

/// A curved objective in front of a price so high that it hides nothing: by weak duality no point violates
/// less than the answer by more than what the objective could still rise to, over the price.
ContinuousAnswer ConeStages::leastViolationByPrice(const Box& box) {
  const double most = mostObjective(box);
  last_ = {};
  for (double lambda = firstLambda(); lambda <= kLambdaMost; lambda *= 10.0) {
    ContinuousAnswer answer = at(box, lambda);
    if (answer.status == Status::Stopped) return answer;
    if (answer.status != Status::Optimal) continue;
    if (most - answer.objective > kHidden * lambda * answer.violation) continue;
    answer.rowMultipliers /= lambda;
    return answer;
  }
  return ended(Status::Failed, "chance rows: first stage not verified");
}

ContinuousAnswer ConeStages::leastViolation(const Box& box) {
  const Eigen::VectorXd none = Eigen::VectorXd::Zero(box.lower.size());
  last_ = {};
  ContinuousAnswer answer = solve(box, {none, objective_.centre, none}, rows_.program().price);
  lastLambda_ = 1.0;
  if (answer.status == Status::Infeasible && !isImpossible(box))
    return ended(Status::Failed, "chance rows: hard ones that barely hold");
  if (answer.status == Status::Failed && isCurved_) answer = leastViolationByPrice(box);
  violationMultipliers_ = answer.rowMultipliers;
  if (answer.status == Status::Optimal && answer.violation < kNoViolation) answer.violation = 0.0;
  return answer;
}

ContinuousAnswer ConeStages::leastObjective(const Box& box, double least) {
  if (least < kNoViolation) {
    ContinuousAnswer answer = allHold(box);
    if (answer.status == Status::Optimal && answer.violation <= violationBudget(least)) return answer;
  }
  return withinBudget(box, least);
}

/// A price at which violation weighs more than the objective, going by their slopes.
double ConeStages::firstLambda() const {
  double price = 0.0;
  for (const double p : rows_.program().price) price = p < kInfinity ? std::max(price, p) : price;
  const Eigen::VectorXd& at = last_.z.size() > 0 ? last_.z : objective_.centre;
  const double slope = objective_.gradient(at).cwiseAbs().maxCoeff();
  return price > 0 && slope > 0 ? 10000.0 * slope / price : 1.0;
}

/// Seeks the price at which the budget is just used up on the face of the last answer; what it came to is
/// left in lambda.
ContinuousAnswer ConeStages::spend(const Box& box, const Bracket& bracket, double& lambda) {
  const double slack = bracket.budget - bracket.least;
  Allowance allowance{bracket.budget - 0.5 * kUnspent * slack, 0.4 * kUnspent * slack, lambda};
  ConePoint point = last_;
  if (!ConeFace(rows_, box, objective_).spend(rows_.program().price, allowance, point)) {
    lambda = allowance.lambda;
    return ended(Status::Failed, "");
  }
  point.status = Status::Optimal;
  ContinuousAnswer answer = measured(point);
  lambda = allowance.lambda;
  if (answer.violation > bracket.budget) return ended(Status::Failed, "");
  last_ = std::move(point);
  lastLambda_ = lambda;
  return answer;
}

bool ConeStages::Bracket::isFound() const {
  return within.lambda < kInfinity && beyond.lambda >= 0;
}

bool ConeStages::Bracket::isClosed() const {
  if (within.answer.violation >= budget - kUnspent * (budget - least)) return true;
  const double saved = within.answer.objective - beyond.answer.objective;
  return saved <= 1e-11 * (1.0 + std::abs(within.answer.objective)) ||
         within.lambda - beyond.lambda <= 1e-14 * within.lambda;
}

/// The price to try next. A linear objective jumps from corner to corner: where the two cost the same. A
/// curved one moves with the price: as the last face proposed, or as what it violates beyond the least falls
/// with about the price's inverse squared.
double ConeStages::nextLambda(const Bracket& bracket, int round, double proposed) const {
  const auto& [within, beyond, least, budget] = bracket;
  if (!isCurved_) {
    return (within.answer.objective - beyond.answer.objective) /
           (beyond.answer.violation - within.answer.violation);
  }
  const double edge = 1e-3 * (within.lambda - beyond.lambda);
  if (round % 3 == 0 && proposed > beyond.lambda + edge && proposed < within.lambda - edge) return proposed;
  const auto rootOf = [least = least](double violation) {
    return std::sqrt(std::max(0.0, violation - least));
  };
  const double low = rootOf(within.answer.violation);
  const double high = rootOf(beyond.answer.violation);
  double share = (rootOf(budget) - low) / (high - low);
  share = round % 3 == 2 || !(share > 0 && share < 1) ? 0.5 : std::clamp(share, 1e-3, 1 - 1e-3);
  if (beyond.lambda <= 0) return within.lambda * (1.0 - share);
  return 1.0 / ((1.0 - share) / within.lambda + share / beyond.lambda);
}

/// A price beside one whose answer could not be verified.
double ConeStages::beside(const Bracket& bracket, double lambda, int time) {
  if (bracket.isFound())
    return 0.5 * (lambda + (time % 2 == 1 ? bracket.within.lambda : bracket.beyond.lambda));
  return bracket.within.lambda < kInfinity ? 0.5 * lambda : 2.0 * lambda;
}

ContinuousAnswer ConeStages::withinBudget(const Box& box, double least) {
  Bracket bracket{{{}, kInfinity}, {{}, -1.0}, least, violationBudget(least)};
  auto& [within, beyond, leastAgain, budget] = bracket;
  double lambda = firstLambda();
  int unjudged = 0;
  for (int round = 0; round < kMostPrices; ++round) {
    ContinuousAnswer answer = at(box, lambda);
    if (answer.status == Status::Failed && unjudged < kMostUnjudged) {
      lambda = beside(bracket, lambda, ++unjudged);
      continue;
    }
    if (answer.status == Status::Failed && bracket.isFound()) break;
    if (answer.status != Status::Optimal) return answer;
    const bool isWithin = answer.violation <= budget;
    if (isWithin && lambda <= 0) return answer;
    if (!isCurved_ && within.lambda < kInfinity && beyond.lambda >= 0) {
      const double corner = within.answer.objective + lambda * within.answer.violation;
      const double value = answer.objective + lambda * answer.violation;
      if (value >= corner - 1e-12 * (1.0 + std::abs(corner))) break;
    }
    double proposed = lambda;
    if (lambda > 0) {
      ContinuousAnswer spent = spend(box, bracket, proposed);
      if (spent.status == Status::Optimal) return spent;
    }
    (isWithin ? within : beyond) = {std::move(answer), lambda};
    if (!(within.lambda < kInfinity)) {
      lambda *= 10.0;
      if (lambda > kLambdaMost)
        return ended(Status::Failed, "second stage: the least violation was not reached again");
    } else if (beyond.lambda < 0) {
      lambda = round < 5 ? 0.1 * lambda : 0.0;
    } else {
      if (bracket.isClosed()) break;
      lambda = nextLambda(bracket, round, proposed);
    }
  }
  lastLambda_ = within.lambda;
  if (!isCurved_) return mixed(bracket);
  return bracket.isClosed() ? within.answer : mixedAndJudged(bracket);
}

/// Between two answers of which no price in the middle could be judged. Either answer bounds from below what
/// the budget allows, by its price (weak duality); a mix that comes near enough to that is as good.
ContinuousAnswer ConeStages::mixedAndJudged(const Bracket& bracket) const {
  const auto boundOf = [&](const Priced& priced) {
    return priced.answer.objective + priced.lambda * (priced.answer.violation - bracket.budget);
  };
  const double bound = std::max(boundOf(bracket.within), boundOf(bracket.beyond));
  ContinuousAnswer answer = mixed(bracket);
  if (answer.objective <= bound + kAsGood * (1.0 + std::abs(bound))) return answer;
  return ended(Status::Failed, "chance rows: second stage not verified");
}

/// Between two corners that cost the same, as far as the budget goes.
ContinuousAnswer ConeStages::mixed(const Bracket& bracket) const {
  const ContinuousAnswer& within = bracket.within.answer;
  const ContinuousAnswer& beyond = bracket.beyond.answer;
  const double share = (bracket.budget - within.violation) / (beyond.violation - within.violation);
  ConePoint point;
  point.status = Status::Optimal;
  point.z = (1.0 - share) * within.z + share * beyond.z;
  point.multipliers = within.rowMultipliers;
  ContinuousAnswer answer = measured(point);
  return answer.violation <= bracket.budget * (1 + 1e-9) ? answer : within;
}

ContinuousAnswer ConeStages::both(const Box& box) {
  ContinuousAnswer answer = allHold(box);
  if (answer.status == Status::Stopped) return answer;
  if (answer.status == Status::Optimal && answer.violation <= violationBudget(0.0)) return answer;
  ContinuousAnswer first = leastViolation(box);
  if (first.status != Status::Optimal) return first;
  return first.violation < kNoViolation ? withinBudget(box, first.violation)
                                        : leastObjective(box, first.violation);
}

}  // namespace tarebowl::solver
