// SPDX-FileCopyrightText: 2026 The Tarebowl authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/solver/cone_face.h"

#include "core/solver/optimality.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>

namespace tarebowl::solver {
namespace {

constexpr int kMostSteps = 12;
constexpr double kDone = 1e-12;     // nothing is left to be gained
constexpr double kVerified = 1e-9;  // largest error that is accepted
constexpr double kSteady = 1e-8;    // regularisation of Newton's equations, relative
constexpr double kAtPrice = 1e-12;  // how near its price a multiplier counts as at it

double sideOf(double multiplier) {
  return multiplier > 0 ? 1.0 : -1.0;
}

}  // namespace

double SmoothObjective::value(const Eigen::VectorXd& z) const {
  return 0.5 * hessian.dot((z - centre).cwiseAbs2()) + slope.dot(z);
}

Eigen::VectorXd SmoothObjective::gradient(const Eigen::VectorXd& z) const {
  return hessian.cwiseProduct(z - centre) + slope;
}

/// What takes part: columns free to move, rows held at a bound, rows that miss theirs and push with all of
/// their price.
struct ConeFace::Members {
  std::vector<Eigen::Index> columns;
  std::vector<Eigen::Index> held;
  std::vector<Eigen::Index> missed;
};

ConeFace::ConeFace(const ConeRows& rows, const Box& box, const SmoothObjective& objective)
    : rows_(rows), box_(box), objective_(objective), tangents_(rows.program().rows) {}

ConeFace::Members ConeFace::membersOf(const Eigen::VectorXd& price, const ConePoint& point) const {
  Members members;
  for (Eigen::Index j = 0; j < point.z.size(); ++j) {
    if (point.z[j] > box_.lower[j] && point.z[j] < box_.upper[j]) members.columns.push_back(j);
  }
  for (Eigen::Index i = 0; i < price.size(); ++i) {
    const double size = std::abs(point.multipliers[i]);
    if (size > 0) (size < price[i] * (1 - kAtPrice) ? members.held : members.missed).push_back(i);
  }
  return members;
}

double ConeFace::judge(const Eigen::VectorXd& price, const ConePoint& point) {
  const Eigen::VectorXd gradient = objective_.gradient(point.z);
  rows_.writeTangents(point.z, gradient, point.multipliers, tangents_);
  const ScaledProgram& program = rows_.program();
  const PricedRows priced{tangents_, program.rowLower, program.rowUpper, price, box_.lower, box_.upper};
  return optimalityError(priced, gradient, point.z, point.multipliers);
}

double ConeFace::violation(const Eigen::VectorXd& price, const Eigen::VectorXd& z) const {
  double sum = 0.0;
  for (Eigen::Index i = 0; i < price.size(); ++i) {
    if (price[i] < kInfinity) sum += price[i] * rows_.violation(i, z);
  }
  return sum;
}

/// Newton's equations, steadied where nothing curves or rows depend on each other. One more line is left for
/// an allowance.
void ConeFace::fillSystem(const Members& members, const ConePoint& point) {
  const ScaledProgram& program = rows_.program();
  const auto free = Eigen::Index(members.columns.size());
  const auto held = Eigen::Index(members.held.size());
  const Eigen::VectorXd gradient = objective_.gradient(point.z);
  const Eigen::VectorXd pushed = gradient + tangents_.transpose() * point.multipliers;
  const double steady = kSteady * std::max(1.0, gradient.cwiseAbs().maxCoeff());
  const double slack = kSteady / std::max(1.0, point.multipliers.cwiseAbs().maxCoeff());
  system_.setZero(free + held + 1, free + held + 1);
  right_.setZero(free + held + 1);
  system_(free + held, free + held) = 1.0;
  for (Eigen::Index a = 0; a < free; ++a) {
    const Eigen::Index j = members.columns[std::size_t(a)];
    system_(a, a) = objective_.hessian[j] + steady;
    right_[a] = -pushed[j];
  }
  rows_.addCurvature(point.z, point.multipliers, members.columns, system_.topLeftCorner(free, free));
  for (Eigen::Index k = 0; k < held; ++k) {
    const Eigen::Index i = members.held[std::size_t(k)];
    for (Eigen::Index a = 0; a < free; ++a) {
      const double coefficient = tangents_(i, members.columns[std::size_t(a)]);
      system_(free + k, a) = system_(a, free + k) = coefficient;
    }
    const double bound = point.multipliers[i] > 0 ? program.rowUpper[i] : program.rowLower[i];
    system_(free + k, free + k) = -slack;
    right_[free + k] = bound - tangents_.row(i).dot(point.z);
  }
}

/// The last line: the rows that miss, each by its price, together miss what is allowed.
void ConeFace::addAllowance(const Eigen::VectorXd& price, const Members& members, const Allowance& allowance,
                            const ConePoint& point) {
  const ScaledProgram& program = rows_.program();
  const Eigen::Index last = system_.rows() - 1;
  double at = 0.0;
  system_(last, last) = 0.0;
  for (const Eigen::Index i : members.missed) {
    const double weight = sideOf(point.multipliers[i]) * price[i];
    const double bound = point.multipliers[i] > 0 ? program.rowUpper[i] : program.rowLower[i];
    at += weight * (tangents_.row(i).dot(point.z) - bound);
    for (std::size_t a = 0; a < members.columns.size(); ++a) {
      const double coefficient = weight * tangents_(i, members.columns[a]);
      system_(last, Eigen::Index(a)) += coefficient;
      system_(Eigen::Index(a), last) += coefficient;
    }
  }
  right_[last] = allowance.violation - at;
}

bool ConeFace::step(const Eigen::VectorXd& price, ConePoint& point, Allowance* allowance) {
  const double lambda = allowance != nullptr ? allowance->lambda : 1.0;
  const Members members = membersOf(lambda * price, point);
  if (members.columns.empty()) return false;
  fillSystem(members, point);
  if (allowance != nullptr) addAllowance(price, members, *allowance, point);
  const Eigen::VectorXd move = system_.partialPivLu().solve(right_);
  if (!move.allFinite()) return false;
  double moved = lambda;
  if (allowance != nullptr) {
    moved = lambda + move[move.size() - 1];
    if (!(moved > 0)) return false;
    allowance->lambda = moved;
  }
  for (std::size_t a = 0; a < members.columns.size(); ++a) {
    const Eigen::Index j = members.columns[a];
    point.z[j] = std::clamp(point.z[j] + move[Eigen::Index(a)], box_.lower[j], box_.upper[j]);
  }
  for (const Eigen::Index i : members.missed)
    point.multipliers[i] = sideOf(point.multipliers[i]) * moved * price[i];
  for (std::size_t k = 0; k < members.held.size(); ++k) {
    const Eigen::Index i = members.held[k];
    const double side = sideOf(point.multipliers[i]);
    const double size = side * (point.multipliers[i] + move[Eigen::Index(members.columns.size() + k)]);
    point.multipliers[i] = side * std::clamp(size, 0.0, moved * price[i]);
  }
  return true;
}

void ConeFace::polish(const Eigen::VectorXd& price, ConePoint& point) {
  ConePoint trial = point;
  for (int steps = 0; steps < kMostSteps && point.error > kDone; ++steps) {
    if (!step(price, trial, nullptr)) return;
    trial.error = judge(price, trial);
    const bool isNearer = trial.error < 0.5 * point.error;
    if (trial.error < point.error) point = trial;
    if (!isNearer && steps > 1) return;
  }
}

bool ConeFace::spend(const Eigen::VectorXd& price, Allowance& allowance, ConePoint& point) {
  ConePoint trial = point;
  trial.error = judge(allowance.lambda * price, trial);
  double best = kInfinity;
  for (int steps = 0; steps < kMostSteps; ++steps) {
    if (!step(price, trial, &allowance)) return false;
    trial.error = judge(allowance.lambda * price, trial);
    const double off = std::abs(violation(price, trial.z) - allowance.violation);
    if (off <= allowance.tolerance && trial.error <= kVerified) {
      point = trial;
      if (trial.error > kDone) polish(allowance.lambda * price, point);
      return true;
    }
    const double merit = std::max(trial.error, off / (1.0 + allowance.violation));
    if (steps > 3 && merit > 0.5 * best) return false;
    best = std::min(best, merit);
  }
  return false;
}

}  // namespace tarebowl::solver
