// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/node_relaxation.h"

#include "core/solver/choice_rules.h"

#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr double kLambdaStep = 4.0;
constexpr double kLambdaMost = 1e14;
constexpr double kLambdaLeast = 1e-9;
constexpr int kMostClimbs = 24;
constexpr int kMostRounds = 8;

std::vector<PiecewiseCost> makeCosts(const ScaledProgram& program, const Stage& stage) {
  std::vector<PiecewiseCost> costs;
  const bool objective = stage.kind != Stage::Kind::LeastViolation;
  for (Eigen::Index j = 0; j < program.rows.cols(); ++j) {
    costs.push_back(objective ? program.objectiveColumn(j) : program.freeColumn(j));
  }
  const auto rows =
      stage.kind == Stage::Kind::ObjectiveHard ? ScaledProgram::Rows::Hard : ScaledProgram::Rows::Priced;
  const double factor = stage.kind == Stage::Kind::ObjectiveBudget ? stage.lambda : 1.0;
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i) costs.push_back(program.rowCost(i, rows, factor));
  return costs;
}

}  // namespace

NodeRelaxation::NodeRelaxation(const ScaledProgram& program, const Stage& stage)
    : program_(program),
      stage_(stage),
      columns_(program.rows.cols()),
      base_(makeCosts(program, stage)),
      simplex_(program.rows, base_),
      lower_(program.lower),
      upper_(program.upper),
      lambda_(stage.lambda) {}

Node NodeRelaxation::root() {
  simplex_.startFromRows();
  return snapshot(-kInfinity);
}

Node NodeRelaxation::snapshot(double bound) const {
  return {bound, lambda_, lower_, upper_, simplex_.basis(), 0};
}

void NodeRelaxation::setLower(Eigen::Index column, double lower) {
  lower_[column] = lower;
  if (lower <= upper_[column]) applyLimits(column);
}

void NodeRelaxation::setUpper(Eigen::Index column, double upper) {
  upper_[column] = upper;
  if (lower_[column] <= upper) applyLimits(column);
}

void NodeRelaxation::applyLimits(Eigen::Index j) {
  PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
  cost = base_[std::size_t(j)];
  cost.setBounds(lower_[j], upper_[j]);
}

void NodeRelaxation::setLambda(double lambda) {
  lambda_ = lambda;
  if (stage_.kind != Stage::Kind::ObjectiveBudget) return;
  for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
    if (program_.price[i] < kInfinity)
      simplex_.costs()[std::size_t(columns_ + i)].setPrice(program_.price[i] * lambda);
  }
}

void NodeRelaxation::restore(const Node& node) {
  lower_ = node.lower;
  upper_ = node.upper;
  setLambda(node.lambda);
  for (Eigen::Index j = 0; j < columns_; ++j) applyLimits(j);
  simplex_.restart(node.basis);
}

void NodeRelaxation::reprice(double lambda) {
  PiecewiseSimplex::Basis basis = simplex_.basis();
  const auto ratio = static_cast<float>(lambda / lambda_);
  for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
    if (program_.price[i] < kInfinity) basis.basicSlope[std::size_t(columns_ + i)] *= ratio;
  }
  setLambda(lambda);
  simplex_.restart(basis);
}

NodeRelaxation::Support NodeRelaxation::support(double bound) const {
  double violation = 0.0;
  for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
    if (!(program_.price[i] < kInfinity)) continue;
    const double activity = simplex_.value(columns_ + i);
    violation +=
        program_.price[i] * std::max({0.0, program_.rowLower[i] - activity, activity - program_.rowUpper[i]});
  }
  return {lambda_, violation, bound};
}

/// Re-solves at another price; nothing where the relaxation could not be solved.
std::optional<NodeRelaxation::Support> NodeRelaxation::supportAt(double lambda) {
  reprice(lambda);
  if (simplex_.optimise() != PiecewiseSimplex::Outcome::Optimal) return std::nullopt;
  Eigen::VectorXd gradient;
  return support(safeBound(gradient));
}

bool NodeRelaxation::isBeyondBudget(const Support& at) const {
  return at.violation > stage_.budget * (1 + 1e-9) + 1e-12;
}
/// How much of the bound is lost only because violation is priced higher than the budget asks for.
bool NodeRelaxation::isOverpriced(const Support& at) const {
  return at.lambda * (stage_.budget - at.violation) > 1e-9 * (1.0 + std::abs(at.bound));
}

/// The bound is concave in the price of violation, and its slope there is the violation beyond the budget:
/// moves the price to where the bound is near its highest. Returns the best bound; its price stays for the
/// children.
double NodeRelaxation::settleLambda(double bound, double cutoff) {
  Support best = support(bound);
  Support beyond = best;  // bracket: one price with too much violation, one with little enough
  Support within = best;
  const bool up = isBeyondBudget(best);
  if (!up && !isOverpriced(best)) return bound;
  for (int round = 0; round < kMostClimbs; ++round) {
    if (best.bound >= cutoff) return best.bound;
    const double lambda = up ? lambda_ * kLambdaStep : lambda_ / kLambdaStep;
    if (lambda > kLambdaMost || lambda < kLambdaLeast) break;
    const std::optional<Support> next = supportAt(lambda);
    if (!next) return best.bound;
    if (next->bound > best.bound) best = *next;
    const bool isBeyond = isBeyondBudget(*next);
    (isBeyond ? beyond : within) = *next;
    if (isBeyond != up) break;
  }
  refineLambda(best, beyond, within);
  if (lambda_ != best.lambda) static_cast<void>(supportAt(best.lambda));
  return best.bound;
}

/// Twice to where the two lines of a bracket meet: their meeting point is where the bound would be highest.
void NodeRelaxation::refineLambda(Support& best, Support beyond, Support within) {
  for (int round = 0; round < 2 && beyond.lambda < within.lambda && isOverpriced(within); ++round) {
    const double beyondBase = beyond.bound - beyond.lambda * (beyond.violation - stage_.budget);
    const double withinBase = within.bound - within.lambda * (within.violation - stage_.budget);
    const double meet = (withinBase - beyondBase) / (beyond.violation - within.violation);
    if (!(meet > beyond.lambda && meet < within.lambda)) return;
    const std::optional<Support> next = supportAt(meet);
    if (!next) return;
    if (next->bound > best.bound) best = *next;
    (isBeyondBudget(*next) ? beyond : within) = *next;
  }
}

double NodeRelaxation::safeBound(Eigen::VectorXd& gradient) const {
  const double bound = lagrangianBound(program_.rows, simplex_.costs(), simplex_.rowSlopes(), gradient);
  return stage_.kind == Stage::Kind::ObjectiveBudget ? bound - lambda_ * stage_.budget : bound;
}
/// The ray of an infeasible node, followed until the bound itself proves that nothing better is here.
bool NodeRelaxation::rayProves(double cutoff) const {
  Eigen::VectorXd gradient;
  for (double length = 1.0; length < 1e13; length *= 10) {
    const double bound =
        lagrangianBound(program_.rows, simplex_.costs(),
                        simplex_.rowSlopes() + length * simplex_.infeasibilityRay(), gradient);
    const double offset = stage_.kind == Stage::Kind::ObjectiveBudget ? lambda_ * stage_.budget : 0.0;
    if (bound - offset > cutoff || bound - offset > mostPossible()) return true;
  }
  return false;
}

/// No point of the box costs more than this.
double NodeRelaxation::mostPossible() const {
  double most = 1.0;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    const PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
    most += std::max(std::abs(cost.costAt(cost.first())), std::abs(cost.costAt(cost.last())));
  }
  for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
    if (!(program_.price[i] < kInfinity) || stage_.kind == Stage::Kind::ObjectiveHard) continue;
    const double reach = program_.rows.row(i).cwiseAbs().dot(upper_.transpose());
    const double limit = (std::isfinite(program_.rowLower[i]) ? std::abs(program_.rowLower[i]) : 0.0) +
                         (std::isfinite(program_.rowUpper[i]) ? std::abs(program_.rowUpper[i]) : 0.0);
    most += lambda_ * program_.price[i] * (reach + limit);
  }
  return most;
}

std::optional<double> NodeRelaxation::solve(double cutoff) {
  double bound = -kInfinity;
  for (int round = 0; round < kMostRounds; ++round) {
    if (!choicesAdmit()) return std::nullopt;
    simplex_.adoptBounds();
    const auto outcome = simplex_.optimise();
    Eigen::VectorXd gradient;
    double here = safeBound(gradient);
    bound = std::max(bound, here);
    if (outcome == PiecewiseSimplex::Outcome::Infeasible && rayProves(cutoff)) return std::nullopt;
    if (bound >= cutoff) return std::nullopt;
    if (outcome != PiecewiseSimplex::Outcome::Optimal) return bound;
    if (stage_.kind == Stage::Kind::ObjectiveBudget) {
      bound = std::max(bound, settleLambda(here, cutoff));
      if (bound >= cutoff) return std::nullopt;
      here = safeBound(gradient);
    }
    if (cutoff == kInfinity || !narrow(gradient, cutoff - here)) break;
  }
  return bound;
}

/// Reduced-cost narrowing: values of a column that alone would lift the bound over the cutoff. True when
/// the current solution was cut off, so that another look pays.
bool NodeRelaxation::narrow(const Eigen::VectorXd& gradient, double slack) {
  bool cuts = false;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
    if (!cost.narrowToWithin(gradient[j], slack, program_.onGrid[std::size_t(j)] != 0)) continue;
    lower_[j] = std::max(lower_[j], cost.lowest());
    upper_[j] = std::min(upper_[j], cost.highest());
    respectThreshold(j);
    const double value = simplex_.value(j);
    cuts = cuts || value < lower_[j] - kWhole || value > upper_[j] + kWhole;
  }
  return cuts;
}

void NodeRelaxation::respectThreshold(Eigen::Index j) {
  const double threshold = program_.threshold[j];
  if (threshold <= 0) return applyLimits(j);
  if (lower_[j] > 0 && lower_[j] < threshold) lower_[j] = threshold;
  if (upper_[j] < threshold) upper_[j] = 0.0;
  if (lower_[j] <= upper_[j]) applyLimits(j);
}

/// Decides what the counts of the choices leave open no longer.
bool NodeRelaxation::choicesAdmit() {
  narrowed_.clear();
  const bool admit = settleChoices(program_, lower_, upper_, narrowed_);
  if (!admit || (lower_.array() > upper_.array()).any()) return false;
  for (const Eigen::Index j : narrowed_) applyLimits(j);
  return true;
}

Eigen::VectorXd NodeRelaxation::wholeValues() const {
  Eigen::VectorXd z = simplex_.columnValues();
  for (Eigen::Index j = 0; j < columns_; ++j) {
    if (program_.onGrid[std::size_t(j)] != 0) z[j] = std::round(z[j]);
    z[j] = std::clamp(z[j], lower_[j], upper_[j]);
  }
  return z;
}

}  // namespace tarebowl::solver
