// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/node_relaxation.h"

#include "core/solver/choice_rules.h"
#include "core/solver/lagrangian_bound.h"

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
      simplex_(program.rows, makeCosts(program, stage)),
      lower_(program.lower),
      upper_(program.upper),
      lambda_(stage.lambda) {
  for (Eigen::Index i = 0; i < program.rows.rows(); ++i)
    isElastic_.push_back(program.price[i] < kInfinity ? 1 : 0);
}

void NodeRelaxation::start(const Box& limits) {
  lower_ = limits.lower;
  upper_ = limits.upper;
  for (Eigen::Index j = 0; j < columns_; ++j)
    simplex_.costs()[std::size_t(j)].setBounds(lower_[j], upper_[j]);
  simplex_.startFromRows();
}

void NodeRelaxation::keep(Node& node, const Branch& branch, bool upSide, bool withState) const {
  node.lambda = lambda_;
  node.lower = lower_;
  node.upper = upper_;
  node.branch = branch;
  node.isUpSide = upSide;
  if (!withState) {
    node.state.reset();
    node.basis = simplex_.basis();
  } else if (node.state) {
    *node.state = simplex_.state();
  } else {
    node.state = std::make_unique<PiecewiseSimplex::State>(simplex_.state());
  }
}

void NodeRelaxation::restore(const Node& node) {
  lower_ = node.lower;
  upper_ = node.upper;
  if (node.lambda != lambda_) setPrices(node.lambda);
  for (Eigen::Index j = 0; j < columns_; ++j)
    simplex_.costs()[std::size_t(j)].setBounds(lower_[j], upper_[j]);
  if (node.state)
    simplex_.resume(*node.state);
  else
    simplex_.restart(node.basis);
  follow(node.branch, node.isUpSide);
}

void NodeRelaxation::follow(const Branch& branch, bool upSide) {
  if (upSide)
    setLower(branch.column, branch.up);
  else
    setUpper(branch.column, branch.down);
}

double NodeRelaxation::boundOfSecond(const Branch& branch) {
  const Eigen::Index j = branch.column;
  simplex_.rowSlopesAfter(j, branch.upFirst ? branch.down : branch.up, branch.other.theta, slopes_);
  PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
  cost.setBounds(branch.upFirst ? lower_[j] : branch.up, branch.upFirst ? branch.down : upper_[j]);
  const double bound = lagrangianBound(program_.rows, simplex_.costs(), slopes_, gradient_);
  cost.setBounds(lower_[j], upper_[j]);
  return stage_.kind == Stage::Kind::ObjectiveBudget ? bound - lambda_ * stage_.budget : bound;
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
  simplex_.costs()[std::size_t(j)].setBounds(lower_[j], upper_[j]);
  simplex_.adoptBound(j);
}

void NodeRelaxation::setPrices(double lambda) {
  lambda_ = lambda;
  if (stage_.kind != Stage::Kind::ObjectiveBudget) return;
  for (Eigen::Index i = 0; i < program_.rows.rows(); ++i) {
    if (isElastic_[std::size_t(i)] != 0)
      simplex_.costs()[std::size_t(columns_ + i)].setPrice(program_.price[i] * lambda);
  }
}

void NodeRelaxation::reprice(double lambda) {
  const double factor = lambda / lambda_;
  setPrices(lambda);
  simplex_.scaleRowSlopes(factor, isElastic_);
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
  return support(safeBound());
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

double NodeRelaxation::safeBound() {
  simplex_.rowSlopes(slopes_);
  const double bound = lagrangianBound(program_.rows, simplex_.costs(), slopes_, gradient_);
  return stage_.kind == Stage::Kind::ObjectiveBudget ? bound - lambda_ * stage_.budget : bound;
}

/// The ray of an infeasible node, followed until the bound itself proves that nothing better is here.
bool NodeRelaxation::rayProves(double cutoff) {
  const double offset = stage_.kind == Stage::Kind::ObjectiveBudget ? lambda_ * stage_.budget : 0.0;
  for (double length = 1.0; length < 1e13; length *= 10) {
    simplex_.rowSlopes(slopes_);
    slopes_ += length * simplex_.infeasibilityRay();
    const double bound = lagrangianBound(program_.rows, simplex_.costs(), slopes_, gradient_) - offset;
    if (bound > cutoff || bound > mostPossible()) return true;
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

std::optional<double> NodeRelaxation::solve(double known, double cutoff, double keepBelow) {
  proven_ = known;
  for (int round = 0; round < kMostRounds; ++round) {
    if (!choicesAdmit()) {
      proven_ = kInfinity;
      return std::nullopt;
    }
    auto outcome = simplex_.optimise(cutoff - proven_);
    double here = safeBound();
    proven_ = std::max(proven_, here);
    if (outcome == PiecewiseSimplex::Outcome::GainReached && proven_ < cutoff) {
      outcome = simplex_.optimise();
      here = safeBound();
      proven_ = std::max(proven_, here);
    }
    if (proven_ >= cutoff) return std::nullopt;
    if (outcome == PiecewiseSimplex::Outcome::Infeasible && rayProves(keepBelow)) {
      proven_ = kInfinity;
      return std::nullopt;
    }
    if (outcome != PiecewiseSimplex::Outcome::Optimal) return proven_;
    if (stage_.kind == Stage::Kind::ObjectiveBudget) {
      proven_ = std::max(proven_, settleLambda(here, cutoff));
      if (proven_ >= cutoff) return std::nullopt;
      here = safeBound();
    }
    if (keepBelow == kInfinity || !narrow(keepBelow - here)) break;
  }
  return proven_;
}

/// Reduced-cost narrowing: values of a column that alone would lift the bound too high. True when the current
/// solution was cut off, so that another look pays.
bool NodeRelaxation::narrow(double slack) {
  bool cuts = false;
  for (Eigen::Index j = 0; j < columns_; ++j) {
    PiecewiseCost& cost = simplex_.costs()[std::size_t(j)];
    if (!cost.narrowToWithin(gradient_[j], slack, program_.onGrid[std::size_t(j)] != 0)) continue;
    lower_[j] = std::max(lower_[j], cost.lowest());
    upper_[j] = std::min(upper_[j], cost.highest());
    const double value = simplex_.value(j);
    respectThreshold(j);
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
